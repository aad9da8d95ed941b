// `node tests/run/check.mjs NAME`: one of the checks of the package, tests/checks/NAME.test.mjs.
import { runNodeTests } from './node-tests.mjs';

const name = process.argv[2];
process.exitCode = await runNodeTests(`check:${name}`, `tests/checks/${name}.test.mjs`, { verbose: true });
