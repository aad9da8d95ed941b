import { exactText, hasCurve, withValue, type Circuit, type Fraction } from '../../engine/core.ts';
import { sweep } from '../../engine/whatif/index.ts';
import type { Reach } from '../axis/index.ts';
import type { Turned } from './turned.ts';

/** A quantity over all settings of what is turned. */
export interface Curve {
  /** The name of the quantity. */
  readonly name: string;
  /** Undefined where it has no value. Never below 0 throughout: a current that always flows the other way is drawn as large as it is. */
  readonly values: readonly (number | undefined)[];
  /** −1 where it is drawn the other way round. */
  readonly sign: 1 | -1;
}

/** Too small a part of a graph to be seen. */
const unseen = 1e-4;

/** Curves over the same settings. */
export interface Curves {
  readonly settings: readonly number[];
  readonly curves: readonly Curve[];
  /** From the lowest value, or 0, to the highest, or 0. */
  readonly reach: Reach;
}

/** The circuit with what is turned at a value of its range. */
export function circuitAt(circuit: Circuit, { what }: Turned, value: Fraction): Circuit {
  const [, supply] = /^r_(.+)/.exec(what) ?? [];
  const text = exactText(value);
  return supply ? withValue(circuit, supply, `r ${text}`) : withValue(circuit, what, text);
}

/** Whether what is turned goes evenly in the logarithm, over more than one power of ten. */
export const isLogarithmic = ({ range: { min, max, scale } }: Turned): boolean =>
  scale !== undefined && Number(min.value) > 0 && Number(max.value) > 10 * Number(min.value);

/** Follows quantities over the whole range of what is turned. A circuit with characteristics takes longer, so it gets fewer points. */
export function curvesOf(circuit: Circuit, turned: Turned, names: readonly string[]): Curves {
  const { min, max } = turned.range;
  const points = circuit.components.length > 2 && circuit.components.some(hasCurve) ? 61 : 181;
  const span = { from: Number(min.value), to: Number(max.value), points };
  const { settings, values } = sweep(
    circuit,
    turned.what,
    isLogarithmic(turned) ? { ...span, scale: 'log' } : span,
    names,
  );
  const curves = names.map((name): Curve => {
    const own = values[name] ?? [];
    const sign = own.every((value = 0) => value <= 0) ? -1 : 1;
    return { name, sign, values: own.map((value) => value && value * sign) };
  });
  const all = curves.flatMap((curve) => curve.values.map((value = 0) => value));
  const [low, high] = [Math.min(0, ...all), Math.max(0, ...all)];
  // What flows backwards through a diode is not seen, and wants no room.
  return { settings, curves, reach: [low < -unseen * high ? low : 0, high] };
}
