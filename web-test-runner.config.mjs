import { a11ySnapshotPlugin } from '@web/test-runner-commands/plugins';
import { browsersPresent } from './tests/run/browsers.mjs';
import { bundledTests } from './tests/run/bundled-tests.mjs';
import { elementReporter } from './tests/run/element-reporter.mjs';
import { emulateFeaturesPlugin } from './tests/run/emulate-features.mjs';
import { freePort } from './tests/run/free-port.mjs';

const groups = browsersPresent();
const absent = ['Chromium', 'Firefox', 'WebKit'].filter(
  (name) => !groups.some((group) => group.name.startsWith(name)),
);

export default {
  groups,
  browsers: groups.flatMap(({ browsers }) => browsers),
  port: await freePort(),
  concurrency: 1,
  concurrentBrowsers: 4,
  staticLogging: true,
  plugins: [bundledTests(), a11ySnapshotPlugin(), emulateFeaturesPlugin()],
  testFramework: { config: { forbidOnly: true, timeout: 60_000 } },
  filterBrowserLogs: ({ args }) => !/^Lit is in dev mode|meant to fail/.test(String(args[0])),
  reporters: [elementReporter(absent)],
};
