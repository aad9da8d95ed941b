import { esbuildPlugin } from '@web/dev-server-esbuild';
import { chromeLauncher } from '@web/test-runner-chrome';
import { a11ySnapshotPlugin } from '@web/test-runner-commands/plugins';
import { chrome } from './tests/run/chrome.mjs';
import { elementReporter } from './tests/run/element-reporter.mjs';
import { emulateFeaturesPlugin } from './tests/run/emulate-features.mjs';
import { freePort } from './tests/run/free-port.mjs';

export default {
  files: 'tests/components/**/*.test.ts',
  port: await freePort(),
  nodeResolve: true,
  concurrency: 1, // a page that is not in front gets no animation frames
  staticLogging: true,
  browsers: [chromeLauncher({ launchOptions: { executablePath: chrome(), args: ['--no-sandbox'] } })],
  plugins: [
    esbuildPlugin({ ts: true, tsconfig: 'tsconfig.json', target: 'es2022' }),
    a11ySnapshotPlugin(),
    emulateFeaturesPlugin(),
  ],
  testFramework: { config: { forbidOnly: true, timeout: 10_000 } },
  filterBrowserLogs: ({ args }) => !/^Lit is in dev mode|meant to fail/.test(String(args[0])),
  reporters: [elementReporter()],
};
