// `npm run test:elements [-- PART_OF_A_PATH]`: the elements' tests in Chromium; options of the runner work too.
import { startTestRunner } from '@web/test-runner';
import { testFiles } from './test-files.mjs';

const args = process.argv.slice(2);
const isOption = args[0]?.startsWith('--');
await startTestRunner({
  argv: isOption ? args : ['--files', ...testFiles('tests/components', args[0] ?? '')],
});
