import { join, relative, sep } from 'node:path';
import { readdirSync, rmSync } from 'node:fs';
import { build } from 'esbuild';
import { seeded } from './seed.mjs';
import { testFiles } from './test-files.mjs';

const folder = 'tests/components';
/** A page of its own costs a browser half a second; as many pages as these keep one browser busy while the other is done. */
const filesAPage = 11;
/** Folders with pages of their own: two define tags that others have too, and WebKit runs the last. */
const alone = ['link', 'page', 'smoke'];

const folderOf = (file) => relative(folder, file).split(sep)[0];

/** The test files of each page by its name, such as `meter_picture/9`: of which folders they are, and which page it is. */
function pages(part) {
  const files = testFiles(folder, part).sort();
  const groups = [
    ...alone.map((name) => files.filter((file) => folderOf(file) === name)),
    files.filter((file) => !alone.includes(folderOf(file))),
  ];
  const named = groups.flatMap(shares).map((share, place) => {
    const folders = [...new Set(share.map(folderOf))];
    return [`${folders.join('_')}/${place + 1}`, share];
  });
  return new Map(named);
}

/** Files shared out evenly between as few pages as there may be. */
function shares(files) {
  const count = Math.ceil(files.length / filesAPage);
  const size = Math.ceil(files.length / count);
  return Array.from({ length: count }, (_, share) => files.slice(share * size, (share + 1) * size));
}

/** For esbuild: a module `page:NAME` that imports the test files of a page. */
const importing = (tests) => ({
  name: 'pages',
  setup(bundler) {
    bundler.onResolve({ filter: /^page:/ }, ({ path }) => ({ path: path.slice(5), namespace: 'page' }));
    bundler.onLoad({ filter: /./, namespace: 'page' }, ({ path }) => ({
      contents: tests
        .get(path)
        .map((file) => `import './${file}';`)
        .join('\n'),
      resolveDir: '.',
    }));
  },
});

/**
 * Bundles the elements' tests with `part` in their path into pages, with what they share in chunks, so that a page
 * asks for some twenty files instead of some hundreds; gives the pages' files.
 */
export async function elementPages(part) {
  const tests = pages(part);
  const outdir = `.tmp/elements-${process.pid}`;
  process.on('exit', () => rmSync(outdir, { recursive: true, force: true }));
  const framed = readdirSync(folder, { recursive: true }).filter((file) => file.endsWith('-in-frame.ts'));
  await build({
    entryPoints: [
      ...[...tests.keys()].map((name) => ({ in: `page:${name}`, out: name })),
      ...framed.map((file) => ({ in: join(folder, file), out: file.replace(/\.ts$/, '') })),
    ],
    outdir,
    bundle: true,
    splitting: true,
    format: 'esm',
    target: 'es2022',
    conditions: ['development', 'browser', 'module'],
    sourcemap: true,
    ignoreAnnotations: true,
    plugins: [importing(tests)],
    ...seeded,
    logLevel: 'warning',
  }).catch(() => process.exit(1)); // esbuild has said what is wrong
  return [...tests.keys()].map((name) => join(outdir, `${name}.js`));
}
