// Circuits of published textbooks (tests/reference names the book, section and licence of each), drawn: the same laws hold, and the
// ribbons are as wide as the currents that the books ask for.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { drawSchematic, prepareRibbons, type Drawing } from '../../../src/engine/schematic/index.ts';
import { solve } from '../../../src/engine/solve/index.ts';
import { seriesParallel } from '../../../src/engine/topology/index.ts';
import { circuitOf, networkOf, networks, workedExamples } from '../solve/reference.ts';
import { withConditions } from '../topology/conditions.ts';
import { laws } from './laws.ts';
import { drawn as drawnWhole } from './web-drawings.ts';
import { boxOf, legsOf, touches } from './plane.ts';

/** The drawings of everything in a list that is series and parallel, at both widths. */
function drawn<T>(
  list: readonly T[],
  circuitOfItem: (item: T) => Circuit,
): { item: T; circuit: Circuit; width: number; drawing: Drawing }[] {
  return list.flatMap((item) => {
    const circuit = circuitOfItem(item);
    // All others up to 40 components are held to the laws once, in the first test: the largest would take minutes.
    if (seriesParallel(circuit).kind === 'irreducible') return [];
    return [300, 640].flatMap((width) => {
      const drawing = drawSchematic(circuit, { width });
      return drawing.kind === 'irreducible' ? [] : [{ item, circuit, width, drawing }];
    });
  });
}

const examples = drawn(workedExamples, circuitOf);
const resistances = drawn(networks, (network) => networkOf(network));

test('every network of the handbook of resistances is drawn, without a crossing where it lies in a plane', () => {
  for (const network of networks) {
    for (const circuit of [networkOf(network), networkOf(network, '6')]) {
      if (circuit.components.length > 40) continue;
      const drawing = drawnWhole(circuit);
      for (const { check } of laws) check(drawing, circuit);
      const crossings = drawing.wires.reduce((sum, { hops }) => sum + hops.length, 0);
      if (/^(wheel|cycle|path)/.test(network.id)) assert.equal(crossings, 0, network.id);
    }
  }
});

test('most of the books\u2019 circuits are series and parallel', () => {
  assert.ok(examples.length >= workedExamples.length, `${examples.length / 2} of ${workedExamples.length}`);
  assert.ok(resistances.length > 0);
});

for (const { name, check } of laws) {
  test(`in the drawings of published circuits ${name}`, () => {
    for (const { circuit, drawing } of [...examples, ...resistances]) check(drawing, circuit);
  });
}

const damaged = examples.flatMap(({ circuit: whole, width }) =>
  (['broken', 'bridged'] as const).map((condition) => {
    const circuit = withConditions(whole, () => condition);
    return { circuit, drawing: drawnWhole(circuit, width) };
  }),
);

for (const { name, check } of laws) {
  test(`and with all their components taken out or bridged, ${name}`, () => {
    for (const { circuit, drawing } of damaged) check(drawing, circuit);
  });
}

test('the ribbon through a component is as wide as the current that the book asks for, to 0.02 px', () => {
  let checked = 0;
  for (const { item, circuit, drawing } of examples) {
    const solution = solve(circuit);
    if (solution.status !== 'solved') continue;
    const ids = circuit.components.map(({ id }) => id);
    const currents = Float64Array.from(ids, (id) => solution.current(id) ?? 0);
    const ribbons = prepareRibbons(drawing, ids);
    const scale = 14 / Math.max(...currents.map(Math.abs));
    for (const { quantity, exact } of item.asked) {
      const symbol = drawing.symbols.find(({ id }) => quantity === `I_${id}`);
      if (!symbol || exact === null) continue;
      const current = Math.abs(new Fraction(exact).valueOf());
      const run = drawing.ribbons.findIndex(({ points }) =>
        legsOf(points).some((leg) => touches(boxOf(leg), { ...symbol.at, width: 0, height: 0 })),
      );
      const width = Math.abs(ribbons.along(run, currents)) * scale;
      assert.ok(Math.abs(width - current * scale) <= 0.02, `${item.id}: ${quantity}`);
      checked++;
    }
  }
  assert.ok(checked > 50, `${checked} currents`);
});
