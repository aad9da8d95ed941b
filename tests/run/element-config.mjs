import { a11ySnapshotPlugin } from '@web/test-runner-commands/plugins';
import { browsersPresent } from './browsers.mjs';
import { elementPages } from './element-pages.mjs';
import { elementReporter } from './element-reporter.mjs';
import { emulateFeaturesPlugin } from './emulate-features.mjs';
import { freePort } from './free-port.mjs';

/** The browser runner's configuration for the elements' tests with `part` in their path, in browsers whose name begins with `name`. */
export async function elementConfig(part, name) {
  const present = browsersPresent(await elementPages(part));
  const absent = ['Chromium', 'Firefox', 'WebKit'].filter(
    (browser) => !present.some((group) => group.name.startsWith(browser)),
  );
  const groups = present.filter(
    (group) => group.files.length && group.name.toLowerCase().startsWith(name.toLowerCase()),
  );
  if (groups.length === 0) {
    console.error(`There is no ${name} here.`);
    process.exit(1);
  }
  return {
    groups,
    browsers: groups.flatMap(({ browsers }) => browsers),
    port: await freePort(),
    concurrency: 1,
    concurrentBrowsers: 4,
    staticLogging: true,
    plugins: [a11ySnapshotPlugin(), emulateFeaturesPlugin()],
    testFramework: { config: { forbidOnly: true, timeout: 60_000 } },
    filterBrowserLogs: ({ args }) => !/^Lit is in dev mode|meant to fail/.test(String(args[0])),
    reporters: [elementReporter(absent)],
  };
}
