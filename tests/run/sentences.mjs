// `node tests/run/sentences.mjs`: writes the snapshot of all sentences anew. Read every sentence that changes, as prose.
import { writeFileSync } from 'node:fs';
import { format, resolveConfig } from 'prettier';
import { load } from './load.mjs';

const { said } = await load('tests/engine/words/said.ts');
const file = 'tests/engine/words/sentences.json';
writeFileSync(file, await format(JSON.stringify(said), { ...(await resolveConfig(file)), parser: 'json' }));
