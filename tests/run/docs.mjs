// `npm run docs`: writes the tables of docs/elements.md from the built manifest.
import { readFileSync, writeFileSync } from 'node:fs';
import { withTables } from './element-tables.mjs';

const file = 'docs/elements.md';
writeFileSync(file, await withTables(readFileSync(file, 'utf8')));
