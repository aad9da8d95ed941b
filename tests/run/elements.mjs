// `npm run test:elements`: the elements' tests in every browser that is present. `[-- PART_OF_A_PATH [BROWSER]]`: some
// of them, in Chromium or in the browser that is named. `[-- --OPTION …]`: with options of the runner.
import { startTestRunner } from '@web/test-runner';
import { elementConfig } from './element-config.mjs';

const options = process.argv.slice(2);
const [part, browser = 'Chromium'] = options[0]?.startsWith('--') ? [] : options;
await startTestRunner({
  config: await (part === undefined ? elementConfig('', '') : elementConfig(part, browser)),
  readFileConfig: false,
  argv: part === undefined ? options : [],
});
