// `node tests/run/golden-drawings.mjs`: draws the golden pictures anew. Look at every one that changes.
import { mkdirSync, writeFileSync } from 'node:fs';
import { load } from './load.mjs';

const folder = 'tests/engine/schematic/golden';
const { pictures, svgOf } = await load('tests/engine/schematic/golden.ts');
mkdirSync(folder, { recursive: true });
for (const [name, picture] of Object.entries(pictures))
  writeFileSync(`${folder}/${name}.svg`, `${svgOf(picture)}\n`);
