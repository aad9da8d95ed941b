import assert from 'node:assert/strict';
import fc from 'fast-check';
import { circuitToJSON, type Circuit } from '../../../src/engine/circuit/index.ts';
import { drawSchematic, type Drawing, type DrawingStyle } from '../../../src/engine/schematic/index.ts';
import { withConditions } from '../topology/conditions.ts';
import { laws } from './laws.ts';
import { hopsOf } from './plane.ts';
import { geometry, places, turned } from './places.ts';
import { planarWeb } from './planar-web.ts';
import { randomCircuit } from './random-circuit.ts';
import { grid, joined, randomWeb } from './random-web.ts';
import { coverAll, throughAll, worstJunction } from './ribbon-laws.ts';
import './web-drawings.ts';
import { webFlow } from './web-flow.ts';
import { quantitiesFor } from './with-quantities.ts';
import { withZero } from './with-zero.ts';

/** A circuit, whether it lies in a plane for certain, and how it is drawn. */
interface Sample {
  readonly circuit: Circuit;
  readonly planar: boolean;
  readonly style: DrawingStyle;
}

const gridded = fc.tuple(grid, fc.boolean()).map(([joins, open]) => joined(joins, open));
const planar = fc.oneof(randomCircuit, planarWeb, gridded).map((circuit) => ({ circuit, planar: true }));
const any = randomWeb.map((circuit) => ({ circuit, planar: false }));
const style: fc.Arbitrary<DrawingStyle> = fc.record({
  symbols: fc.constantFrom('iec' as const, 'ansi' as const),
  width: fc.constantFrom(200, 300, 420, 640, 1000),
});

/** Circuits of every form and kind, in a third of them some components taken out or bridged, in half of them a 0 V mark, in half of them quantities written. */
const sample: fc.Arbitrary<Sample> = fc
  .tuple(
    fc.oneof({ arbitrary: planar, weight: 3 }, { arbitrary: any, weight: 2 }),
    style,
    fc.nat(99),
    fc.nat(99),
  )
  .map(([{ circuit, planar }, style, by, written]) => ({
    circuit: withZero(
      withConditions(circuit, (_, place) =>
        by % 3 > 0 || (place + by) % 4 > 1 ? undefined : (place + by) % 4 === 0 ? 'broken' : 'bridged',
      ),
      by,
    ),
    planar,
    style: { ...style, quantities: quantitiesFor(circuit, written) },
  }));

const draw = (circuit: Circuit, style: DrawingStyle): Drawing => {
  const drawing = drawSchematic(circuit, style);
  assert.ok(drawing.kind === 'drawing');
  return drawing;
};

/** Throws unless the drawing of a circuit is legible and stands still, and the ribbons on it add up; gives how often its wires cross. */
export function check({ circuit, planar, style }: Sample): number {
  const drawing = draw(circuit, style);
  for (const law of laws) law.check(drawing, circuit);
  const flow = webFlow(circuit);
  const current = (id: string): number => flow.get(id) ?? NaN;
  assert.ok(worstJunction(drawing, current) < 1e-9, 'the ribbons add up');
  throughAll(drawing, circuit, current);
  coverAll(drawing);
  const crossings = hopsOf(drawing).length;
  if (planar) assert.equal(crossings, 0, 'a crossing in a plane');
  assert.deepEqual(draw(circuit, style), drawing, 'the same again');
  const before = geometry(circuit, style);
  for (const end of ['first', 'last'] as const)
    assert.equal(geometry(turned(circuit, end), style), before, `every setting at its ${end}`);
  const whole = places(
    withConditions(circuit, () => undefined),
    style,
  );
  assert.deepEqual(places(circuit, style), whole, 'nothing taken out or bridged');
  return crossings;
}

/** Draws so many random circuits and checks them; throws at the first fault with the circuit that has it. */
export function soak(count: number, seed?: number): { components: number; crossings: number } {
  const found = { components: 0, crossings: 0 };
  for (const each of fc.sample(sample, { numRuns: count, ...(seed !== undefined && { seed }) })) {
    try {
      found.crossings += check(each);
      found.components += each.circuit.components.length;
    } catch (error) {
      const where = `${JSON.stringify(each.style)} ${JSON.stringify(circuitToJSON(each.circuit))}`;
      throw new Error(`${error instanceof Error ? error.message : ''}: ${where}`, { cause: error });
    }
  }
  return found;
}
