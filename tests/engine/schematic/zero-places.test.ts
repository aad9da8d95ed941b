import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawSchematic, type Drawing } from '../../../src/engine/schematic/index.ts';
import './golden.ts';
import { laws } from './laws.ts';

/** The drawings of a circuit with the 0 V mark at each of its nodes in turn, each held to every law. */
function marked(line: string): readonly { readonly zero: string; readonly drawing: Drawing }[] {
  const circuit = parseCircuit(line);
  const nodes = [...new Set(circuit.components.flatMap(({ from, to }) => [from, to]))];
  return nodes.flatMap((zero) =>
    [300, 640].map((width) => {
      const one = { ...circuit, zero };
      const drawing = drawSchematic(one, { width });
      assert.ok(drawing.kind === 'drawing');
      for (const law of laws) law.check(drawing, one);
      return { zero, drawing };
    }),
  );
}

test('a 0 V mark at any node beside a changeover switch leaves that one symbol, and keeps every law', () => {
  const found = marked('B1 6 V + ((changeover S1a closed + L1 8 Ω) ∥ (changeover S1b + R1 4 Ω)) + L2 12 Ω');
  assert.equal(found.length, 10);
  for (const { drawing } of found) {
    const [one, other] = ['S1a', 'S1b'].map((id) => drawing.symbols.find((each) => each.id === id)?.at);
    assert.ok(one && other && drawing.mark);
    // The two contacts of one symbol are 12 px to either side of its line.
    assert.equal(Math.abs(one.x - other.x) + Math.abs(one.y - other.y), 24);
  }
});

test('a 0 V mark at a labelled point leaves the point its letter, and keeps every law', () => {
  const found = marked('B1 12 V + @X + R1 2 Ω + @Y + (R2 4 Ω ∥ R3 6 Ω) + @Z');
  assert.equal(new Set(found.map(({ zero }) => zero)).size, 3);
  for (const { zero, drawing } of found) {
    assert.equal(drawing.mark?.node, zero);
    const letters = drawing.labels.filter(({ role }) => role === 'point').map(({ text }) => text);
    assert.deepEqual(letters.sort(), ['X', 'Y', 'Z']);
  }
});
