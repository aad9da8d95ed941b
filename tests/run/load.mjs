import { rmSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/** Imports a TypeScript module of the tests as it is now. */
export async function load(file) {
  const outfile = `.tmp/load-${process.pid}.mjs`;
  await build({
    entryPoints: [file],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    ignoreAnnotations: true,
  });
  try {
    return await import(pathToFileURL(outfile).href);
  } finally {
    rmSync(outfile);
  }
}
