import { build } from 'esbuild';
import { seeded } from './seed.mjs';

/** Bundles TypeScript files into one module for Node, `.tmp/NAME.mjs`, and gives its path. */
export async function bundle(name, files) {
  const outfile = `.tmp/${name}.mjs`;
  await build({
    stdin: { contents: files.map((file) => `import './${file}';`).join('\n'), resolveDir: '.' },
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    sourcemap: true,
    // Otherwise `sideEffects` of package.json drops the imports of the files without a word.
    ignoreAnnotations: true,
    ...seeded,
    logLevel: 'warning',
  }).catch(() => process.exit(1)); // esbuild has said what is wrong
  return outfile;
}
