import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { formOf, supplyForms } from '../../../src/engine/circuit/index.ts';
import { fields } from '../../../src/engine/notation/fields.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawSchematic } from '../../../src/engine/schematic/index.ts';
import { pieces, seriesParallel } from '../../../src/engine/topology/index.ts';
import { pictures } from './golden.ts';
import { laws } from './laws.ts';
import { hopsOf } from './plane.ts';

/** The circuits of the demo's contact sheet. */
const lines = [
  ...readFileSync('demo/contact-sheet.html', 'utf8').matchAll(/<rheolet-board[^>]*>([^<]+)<\/rheolet-board/g),
].map(([, line = '']) => line);
const circuits = lines.map(parseCircuit);

const drawingOf = (line: string, style = {}) => {
  const drawing = drawSchematic(parseCircuit(line), style);
  assert.ok(drawing.kind === 'drawing', line);
  return drawing;
};

test('the contact sheet has sixty different circuits, and every golden picture is of one of them', () => {
  assert.equal(new Set(lines).size, 60);
  const written = circuits.map(formatCircuit);
  const golden = Object.entries(pictures);
  assert.ok(golden.length >= 20);
  const elsewhere = golden.filter(
    ([, { circuit }]) => !written.includes(formatCircuit(parseCircuit(circuit))),
  );
  assert.deepEqual(
    elsewhere.map(([name]) => name),
    [],
  );
});

test('the contact sheet shows every kind of component, every form of a supply, and networks of every kind', () => {
  const components = circuits.flatMap((circuit) => circuit.components);
  const kinds: readonly string[] = components.map(({ kind }) => kind);
  assert.deepEqual(
    Object.keys(fields).filter((kind) => !kinds.includes(kind)),
    [],
  );
  const forms = components.map((each) => (each.kind === 'supply' ? formOf(each) : ''));
  assert.deepEqual(
    supplyForms.filter((form) => !forms.includes(form)),
    [],
  );
  const trees = circuits.map((circuit) => seriesParallel(circuit).kind);
  for (const kind of ['series', 'parallel', 'irreducible'])
    assert.ok(
      trees.some((each) => each === kind),
      kind,
    );
  assert.ok(circuits.some(({ terminals }) => terminals));
  assert.ok(circuits.some((circuit) => pieces(circuit).length > 1));
  assert.ok(lines.some((line) => hopsOf(drawingOf(line)).length > 0));
  const sizes = circuits.map((circuit) => circuit.components.length);
  assert.ok(Math.min(...sizes) <= 3 && Math.max(...sizes) >= 38 && Math.max(...sizes) <= 40);
});

for (const symbols of ['iec', 'ansi'] as const)
  test(`every circuit of the contact sheet is drawn under every law, with the symbols of ${symbols}`, () => {
    for (const [i, line] of lines.entries()) {
      const circuit = circuits[i];
      assert.ok(circuit);
      for (const width of [300, 640]) {
        const drawing = drawingOf(line, { symbols, width });
        for (const { name, check } of laws) {
          try {
            check(drawing, circuit);
          } catch (error) {
            assert.fail(`${name}: ${line} at ${width}: ${String(error)}`);
          }
        }
      }
    }
  });
