import { solve, withValue, type Circuit } from '../../engine/index.ts';
import type { Snapshot } from '../link/index.ts';

const extremes = new WeakMap<Circuit, readonly Circuit[]>();

/** A circuit with each of its sliders, in turn, at either end. */
function extremesOf(circuit: Circuit): readonly Circuit[] {
  const known = extremes.get(circuit);
  if (known) return known;
  const made = circuit.components.flatMap((component) =>
    component.kind === 'resistor' && component.range
      ? [component.range.min, component.range.max].map(({ value }) => withValue(circuit, component.id, value))
      : [],
  );
  extremes.set(circuit, made);
  return made;
}

/** A text as wide as any that a reading is likely to become, its digits made alike. */
export function roomFor(snapshot: Snapshot, write: (at: Snapshot) => string): string {
  const { start, settings, solution, held, course, covered } = snapshot;
  const others = extremesOf(start).map((circuit) => {
    const readings = solve(circuit);
    return write({ start, circuit, settings, solution, readings, course, covered, ...(held && { held }) });
  });
  const texts = [write(snapshot), ...others].map((text) => text.replace(/\d/g, '0'));
  return texts.reduce((widest, text) => (text.length > widest.length ? text : widest));
}
