// `npm run lint`: what the compiler says of the sources and the tests, then what the linter says, of one program: its
// types are most of the work of both.
import { ESLint } from 'eslint';
import ts from 'typescript';

const terminal = {
  getCanonicalFileName: (name) => name,
  getCurrentDirectory: ts.sys.getCurrentDirectory,
  getNewLine: () => ts.sys.newLine,
};

/** The program of a configuration of the compiler, and what is wrong with it, to be read. */
function compiled(file) {
  const { fileNames, options, errors } = ts.getParsedCommandLineOfConfigFile(file, {}, ts.sys);
  const program = ts.createProgram(fileNames, options);
  const wrong = [...errors, ...ts.getPreEmitDiagnostics(program)];
  return { program, wrong: ts.formatDiagnosticsWithColorAndContext(wrong, terminal) };
}

/** What the linter says of all files, to be read, given the types of a program. */
async function linted(program) {
  const typed = {
    files: ['**/*.ts'],
    languageOptions: { parserOptions: { project: null, programs: [program] } },
  };
  const linter = new ESLint({ overrideConfig: typed });
  const formatter = await linter.loadFormatter();
  return formatter.format(await linter.lintFiles('.'));
}

const { program, wrong } = compiled('tsconfig.json');
const said = wrong || (await linted(program));
if (said) {
  console.log(said);
  process.exitCode = 1;
}
