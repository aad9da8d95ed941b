import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { circuitFrom, circuitToJSON, type Circuit } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawSchematic, type Drawing } from '../../../src/engine/schematic/index.ts';
import { seriesParallel, type Tree } from '../../../src/engine/topology/index.ts';
import { drawings } from './random-drawings.ts';
import { randomCircuit } from './random-circuit.ts';

type Symbol = Drawing['symbols'][number];

const symbolsOf = (drawing: Drawing): ReadonlyMap<string, Symbol> =>
  new Map(drawing.symbols.map((symbol) => [symbol.id, symbol]));

/** The parallel groups of a tree, however deep. */
const groupsOf = (tree: Tree): Tree[] =>
  tree.kind === 'component'
    ? []
    : [...(tree.kind === 'parallel' ? [tree] : []), ...tree.parts.flatMap(groupsOf)];

/** Whether numbers only rise or only fall. */
const isInOrder = (places: readonly number[]): boolean => {
  const steps = places.slice(1).map((place, i) => Math.sign(place - (places[i] ?? NaN)));
  return steps.every((step) => step !== 0 && step === steps[0]);
};

test('the components of a branch stand in one line, in their order, and branches in theirs: whatever is added', () => {
  for (const { circuit, drawing } of drawings().slice(0, 600)) {
    const tree = seriesParallel(circuit);
    assert.ok(tree.kind !== 'irreducible');
    const symbols = symbolsOf(drawing);
    const at = (id: string) => symbols.get(id)?.at ?? { x: NaN, y: NaN };
    const isMeter = (id: string): boolean =>
      circuit.components.some((each) => each.id === id && each.kind === 'voltmeter');
    for (const group of groupsOf(tree)) {
      if (group.kind !== 'parallel') continue;
      for (const branch of group.parts) {
        const line = branch.kind === 'series' ? branch.parts.filter(({ kind }) => kind === 'component') : [];
        const points = line.flatMap((part) => (part.kind === 'component' ? [at(part.id)] : []));
        if (points.length < 2) continue;
        const level = points.every(({ y }) => y === points[0]?.y);
        assert.ok(level || points.every(({ x }) => x === points[0]?.x), 'one line');
        assert.ok(isInOrder(points.map(({ x, y }) => (level ? x : y))), 'in order');
      }
      // The 0 V mark stands behind a component as another one would, so that a branch of one is moved along it.
      if (circuit.zero !== undefined) continue;
      // Voltmeters stand outermost, in their own order.
      const single = group.parts.flatMap((part) => (part.kind === 'component' ? [part.id] : []));
      for (const ids of [single.filter(isMeter), single.filter((id) => !isMeter(id))]) {
        if (ids.length < 2) continue;
        const points = ids.map(at);
        const spread = points.every(({ x }) => x === points[0]?.x);
        assert.ok(isInOrder(points.map(({ x, y }) => (spread ? y : x))), ids.join(' '));
      }
    }
  }
});

/** The circuit with one resistor more: beside a component, or behind it. */
function grown(circuit: Circuit, at: number, way: 'beside' | 'behind'): Circuit {
  const json = circuitToJSON(circuit);
  const place = at % json.components.length;
  const neighbour = json.components[place];
  assert.ok(neighbour);
  const added = {
    id: 'R999',
    kind: 'resistor',
    resistance: '12',
    from: neighbour['from'],
    to: neighbour['to'],
  };
  const components =
    way === 'beside'
      ? [...json.components, added]
      : [
          ...json.components.map((each) => (each === neighbour ? { ...each, to: 'between' } : each)),
          { ...added, from: 'between' },
        ];
  return circuitFrom({ ...json, components });
}

/** What an addition has moved: whether the whole was turned on its side, and which parts of its components and of their pairs were turned. */
function moved(before: Drawing, after: Drawing) {
  const [old, now] = [symbolsOf(before), symbolsOf(after)];
  const kept = [...old].flatMap(([id, was]) => {
    const is = now.get(id);
    return is ? [{ was, is }] : [];
  });
  assert.equal(kept.length, old.size);
  const first = kept[0];
  const pairs = kept.flatMap((a, i) => kept.slice(i + 1).map((b) => [a, b] as const));
  const swapped = pairs.filter(([a, b]) =>
    (['x', 'y'] as const).some(
      (axis) => (a.was.at[axis] - b.was.at[axis]) * (a.is.at[axis] - b.is.at[axis]) < -100,
    ),
  );
  return {
    onItsSide: first && first.was.turn % 180 !== first.is.turn % 180 ? 1 : 0,
    turned: kept.filter(({ was, is }) => was.turn !== is.turn).length / kept.length,
    swapped: pairs.length > 0 ? swapped.length / pairs.length : 0,
  };
}

const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;

for (const way of ['beside', 'behind'] as const)
  for (const width of [300, 640])
    test(`one resistor more, ${way} any component at ${width} px, moves little: hardly any drawing on its side, few components, few pairs`, () => {
      const samples = fc
        .sample(fc.tuple(randomCircuit, fc.nat(99)), { numRuns: 600, seed: 7 })
        .filter(([{ components }]) => components.length > 2 && components.length < 15);
      assert.ok(samples.length > 150);
      const found = samples.map(([circuit, at]) => {
        const [before, after] = [circuit, grown(circuit, at, way)].map((each) =>
          drawSchematic(each, { width }),
        );
        assert.ok(before?.kind === 'drawing' && after?.kind === 'drawing');
        return moved(before, after);
      });
      const [onItsSide, turned, swapped] = [
        mean(found.map((each) => each.onItsSide)),
        mean(found.map((each) => each.turned)),
        mean(found.map((each) => each.swapped)),
      ];
      assert.ok(onItsSide < 0.06, `${onItsSide} on their sides`);
      assert.ok(turned < 0.15, `${turned} turned`);
      assert.ok(swapped < 0.08, `${swapped} swapped`);
    });

test('a branch more beside the others leaves those where they are in their order, and all before and behind the group on its side', () => {
  const line = 'B1 6 V + S1 closed + (R1 1 Ω ∥ R2 2 Ω) + L1 3 Ω';
  const draw = (text: string): Drawing => {
    const drawing = drawSchematic(parseCircuit(text));
    assert.ok(drawing.kind === 'drawing');
    return drawing;
  };
  const [before, after] = [draw(line), draw(line.replace('R2 2 Ω', 'R2 2 Ω ∥ R3 3 Ω'))];
  assert.deepEqual(moved(before, after), { onItsSide: 0, turned: 0, swapped: 0 });
});
