// `npm run test:elements`: the elements' tests in every browser that is present. `[-- PART_OF_A_PATH [BROWSER]]`: some
// of them, in Chromium or in the browser that is named. `[-- --OPTION …]`: with options of the runner.
import { startTestRunner } from '@web/test-runner';
import config from '../../web-test-runner.config.mjs';
import { testFiles } from './test-files.mjs';

const [first, browser = 'Chromium'] = process.argv.slice(2);
const isOption = first?.startsWith('--');

function only(part) {
  const group = config.groups.find(({ name }) => name.toLowerCase().startsWith(browser.toLowerCase()));
  if (group) return [{ ...group, files: testFiles('tests/components', part) }];
  console.error(`There is no ${browser} here.`);
  process.exit(1);
}

await startTestRunner({
  config: { ...config, groups: first && !isOption ? only(first) : config.groups },
  readFileConfig: false,
  argv: isOption ? process.argv.slice(2) : [],
});
