import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { build } from 'esbuild';
import { seeded } from './seed.mjs';

const folder = 'tests/components';
const isEntry = (file) => file.endsWith('.test.ts') || file.endsWith('-in-frame.ts');

/** Bundles all tests of elements, with what they share in chunks; the bodies by the paths that a page asks for. */
async function bundles() {
  const { outputFiles } = await build({
    entryPoints: readdirSync(folder, { recursive: true })
      .filter(isEntry)
      .map((file) => join(folder, file)),
    bundle: true,
    splitting: true,
    format: 'esm',
    target: 'es2022',
    conditions: ['development', 'browser', 'module'],
    sourcemap: true,
    outbase: '.',
    outdir: '.',
    chunkNames: `${folder}/chunks/[hash]`,
    ignoreAnnotations: true,
    ...seeded,
    write: false,
    logLevel: 'warning',
  }).catch(() => process.exit(1)); // esbuild has said what is wrong
  return new Map(outputFiles.map(({ path, text }) => [`/${relative('.', path).replaceAll(sep, '/')}`, text]));
}

/**
 * Plugin for the browser runner: a test comes as a bundle, so that its page asks for some twenty files instead of some
 * hundreds, which is most of the time that Firefox takes for it.
 */
export function bundledTests() {
  let served;
  return {
    name: 'bundled-tests',
    serverStart: async () => (served = await bundles()),
    serve: ({ path }) => {
      const body = served.get(path.replace(/\.ts$/, '.js'));
      return body && { body, type: path.endsWith('.map') ? 'json' : 'js' };
    },
  };
}
