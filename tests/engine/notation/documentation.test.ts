import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { withMistakes } from './documentation.ts';
import { sameCircuit } from './same-circuit.ts';

const page = readFileSync('docs/notation.md', 'utf8');

test('every circuit in the documentation can be read', () => {
  const blocks = [...page.matchAll(/```rheolet\n([^`]*)```/g)].flatMap(([, lines = '']) =>
    lines.trim().split('\n'),
  );
  assert(blocks.length >= 8);
  for (const line of blocks) {
    const circuit = parseCircuit(line);
    sameCircuit(parseCircuit(formatCircuit(circuit)), circuit, line);
  }
});

test('every component in the documentation can be read', () => {
  const components = [...page.split('## Mistakes')[0]!.matchAll(/`([RBLSAVI]1 [^`]+)`/g)].map(
    ([, text = '']) => text,
  );
  assert(components.length >= 12);
  for (const text of components) assert.equal(parseCircuit(text).components.length, 1, text);
});

test('the documentation’s table of mistakes is what the parser says (node tests/run/notation-docs.mjs writes it)', () => {
  assert.equal(page, withMistakes(page));
});
