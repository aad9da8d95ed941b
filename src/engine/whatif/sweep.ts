import {
  hasCurve,
  isResistor,
  isSupply,
  isSurrounding,
  isSwitch,
  surroundingRanges,
  type Circuit,
} from '../circuit/index.ts';
import { solve, track } from '../solve/index.ts';
import { say } from '../words/index.ts';
import { meant, varied, type Varied } from './free.ts';

/** From where to where something is varied, in SI units (°C, lx). */
export interface Span {
  readonly from: number;
  readonly to: number;
  /** Settings, both ends among them; 101 unless said, 2 to 10,000. */
  readonly points?: number;
  /** Evenly in ratio, not in distance; both ends are above 0 then. */
  readonly scale?: 'log';
}

/** Quantities over the settings of one thing. */
export interface Sweep {
  readonly what: Varied;
  readonly settings: readonly number[];
  /** Of each quantity its values in the order of the settings; undefined where it has none. */
  readonly values: Readonly<Record<string, readonly (number | undefined)[]>>;
}

const mostPoints = 10_000;

/** Where a slider may go, or what surrounds the circuit; undefined for what has none. */
function ownSpan(circuit: Circuit, what: Varied): Span | undefined {
  if (isSurrounding(what)) {
    const { min, max, scale } = surroundingRanges[what];
    return { from: Number(min.value), to: Number(max.value), ...(scale && { scale: 'log' }) };
  }
  const component = meant(circuit, what);
  if (!isResistor(component) && !isSupply(component)) return undefined;
  const inside = component.kind === 'supply' && what !== component.id;
  const range = inside ? component.internalRange : component.range;
  return range && { from: Number(range.min.value), to: Number(range.max.value) };
}

/**
 * Follows quantities (names as in `quantities`) while one thing goes over a span, or without one over its own range. Throws RangeError
 * where it has none either, even ratios lead from or to 0, or there is no such quantity, CircuitFormatError where it cannot be varied.
 */
export function sweep(
  circuit: Circuit,
  what: Varied,
  span: Span | undefined,
  quantities: readonly string[],
): Sweep {
  const over = span ?? ownSpan(circuit, what);
  if (!over) throw new RangeError(`${what} has no range: say from where to where.`);
  const { from, to, points = 101, scale } = over;
  if (scale && !(from > 0 && to > 0))
    throw new RangeError(`Even ratios lead from above 0 to above 0, not from ${from} to ${to}.`);
  if (circuit.components.some((each) => each.id === what && isSwitch(each)))
    throw new RangeError(`${what} is open or closed, and has no range.`);
  for (const end of [from, to]) varied(circuit, what, end); // refuses what cannot be had
  const now = solve(circuit);
  for (const name of quantities) {
    const reason = now.reason(name);
    if (reason?.code === 'no such quantity') throw new RangeError(say(reason));
  }
  const count = Math.min(Math.max(Math.round(points), 2), mostPoints);
  const at = (share: number): number => (scale ? from * (to / from) ** share : from + (to - from) * share);
  const settings = Array.from({ length: count }, (_, k) => (k === count - 1 ? to : at(k / (count - 1))));
  const straight =
    circuit.components.some(({ id, kind }) => id === what && kind === 'resistor') &&
    !circuit.components.some(hasCurve);
  const tracker = straight ? track(circuit, what, quantities) : undefined;
  const rows = settings.map((setting): readonly (number | undefined)[] => {
    if (!tracker) {
      const solution = solve(varied(circuit, what, setting));
      return quantities.map((name) => solution.quantity(name));
    }
    const out = new Float64Array(quantities.length).fill(NaN);
    tracker.at(setting, out);
    return [...out].map((value) => (Number.isNaN(value) ? undefined : value));
  });
  const values = quantities.map((name, place) => [name, rows.map((row) => row[place])] as const);
  return { what, settings, values: Object.fromEntries(values) };
}
