import { hasCurve, isSupply, type Circuit, type CurrentSource, type Supply } from '../circuit/index.ts';
import type { Dial } from './dials.ts';
import { evaluate } from './expression.ts';
import { constant, inRatios, product, sum, through, valueAt, type Ratio, type Three } from './ratio.ts';
import type { Claim } from './read-claim.ts';
import { reader, signIn } from './settle.ts';
import { signPlaces } from './sign-places.ts';

/** A setting of one slider at which the sign of a claim is known. */
export interface Settled {
  readonly place: number;
  /** Undefined where the claim has no value. */
  readonly sign: number | undefined;
}

/** What is known of a claim along one slider. */
export interface Line {
  readonly settled: readonly Settled[];
  /** At so many of the slider's settings its sign is known. */
  readonly tried: number;
  /** So many settings were tried one by one for want of a ratio. */
  readonly singles: number;
}

/** Every factor of a power is a ratio of straight lines. */
function factorsOf(
  name: string,
  supplies: readonly (Supply | CurrentSource)[],
): readonly (readonly string[])[] {
  const id = name.slice(name.indexOf('_') + 1);
  if (name === 'P_total' || name === 'P_dissipated')
    return supplies.map(({ id, kind }) => [`${kind === 'supply' ? 'E' : 'V'}_${id}`, `I_${id}`]);
  if (name.startsWith('P_')) return [[`V_${id}`, `I_${id}`]];
  if (name.startsWith('Pemf_')) return [[`E_${id}`, `I_${id}`]];
  return name.startsWith('Pr_') ? [[`r_${id}`, `I_${id}`, `I_${id}`]] : [[name]];
}

/** The quantities of a circuit as ratios of polynomials in what one slider is set to, from three of its settings. */
function ratiosOf(
  circuit: Circuit,
  dial: Dial,
  places: readonly [number, number, number],
): (name: string) => Ratio | undefined {
  const reads = places.map((place) => reader(dial.turn(circuit, place)));
  const settings = places.map(dial.at);
  const supplies = circuit.components.filter(isSupply);
  const lineOf = (name: string): Ratio | undefined => {
    const values = reads.map((read) => read(name));
    const [first] = values;
    if (!first || values.includes(undefined)) return undefined;
    if (values.every((value) => value?.equals(first))) return constant(first);
    return through(settings as unknown as Three, values as unknown as Three);
  };
  return (name) => {
    if (!name.startsWith('P')) return lineOf(name);
    const terms = factorsOf(name, supplies).map((factors) =>
      factors.map(lineOf).reduce((a, b) => a && b && product(a, b)),
    );
    // What has no steady p.d. may take no power all the same.
    if (terms.includes(undefined)) return undefined;
    return terms.reduce((a, b) => a && b && sum(a, b));
  };
}

/** Few settings are tried one by one. */
const few = 8;

/**
 * The sign of a claim at enough settings of one slider to know it at all of them: from the ratio of polynomials that it is in what the slider
 * is set to, and at both ends by itself. Where that is none every setting is tried, or `most` of them, evenly spread.
 */
export function alongLine(circuit: Circuit, claim: Claim, dial: Dial, most: number): Line {
  const { last, now } = dial;
  const settled = (place: number): Settled => ({ place, sign: signIn(dial.turn(circuit, place), claim) });
  const inside = [Math.floor(last / 4), Math.floor(last / 2), Math.floor((3 * last) / 4)] as const;
  const ratio =
    last < few || !dial.isSlider || circuit.components.some(hasCurve)
      ? undefined
      : evaluate(claim.difference, inRatios(ratiosOf(circuit, dial, [...inside])));
  if (!ratio) {
    const singles = Math.max(Math.min(last + 1, most), 0);
    const places = Array.from({ length: singles }, (_, k) => Math.floor((k * (last + 1)) / singles));
    return { settled: places.map(settled), tried: singles, singles };
  }
  const { over, under } = ratio;
  const places = new Set([over, under].flatMap((terms) => [...signPlaces(terms, dial.at, last)]).concat(now));
  const signAt = (place: number): number | undefined => {
    const [above, below] = [over, under].map((terms) => valueAt(terms, dial.at(place)).compare(0));
    return below ? Math.sign((above ?? 0) * below) : undefined;
  };
  return {
    settled: [...places].map((place) =>
      place === 0 || place === last ? settled(place) : { place, sign: signAt(place) },
    ),
    tried: last + 1,
    singles: 0,
  };
}
