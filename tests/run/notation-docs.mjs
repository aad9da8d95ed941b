// `node tests/run/notation-docs.mjs`: writes the table of mistakes of docs/notation.md anew. Read every sentence that changes.
import { readFileSync, writeFileSync } from 'node:fs';
import { load } from './load.mjs';

const file = 'docs/notation.md';
const { withMistakes } = await load('tests/engine/notation/documentation.ts');
writeFileSync(file, withMistakes(readFileSync(file, 'utf8')));
