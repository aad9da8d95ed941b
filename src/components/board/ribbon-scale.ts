import {
  type Circuit,
  exactText,
  feltBy,
  isContact,
  isSupply,
  isSwitch,
  isTrack,
  positions,
  type Solution,
  solve,
  surroundingRanges,
  withValue,
} from '../../engine/core.ts';
import { once } from '../link/index.ts';

/** The widest ribbon at the settings with the largest currents, in pixels. */
const widest = 16;
/** How much larger than now the currents may be that the ribbons leave room for. */
const room = 4;
/** Wider than this no ribbon is drawn. */
const limit = 40;

/** What the widths of ribbons and the glow of lamps are measured by. */
export interface RibbonScale {
  /** Pixels for an ampere. */
  readonly perAmpere: number;
  /** The power at which a lamp glows most, in watts. */
  readonly brightest: number;
}

function largest(circuit: Circuit, read: (solution: Solution, id: string) => number | undefined): number {
  const solutions = positions(circuit).map((each) => solve(each));
  return Math.max(
    0,
    ...solutions.flatMap((solution) => circuit.components.map(({ id }) => Math.abs(read(solution, id) ?? 0))),
  );
}

/** The circuit with all switches closed, and, for the largest currents, all resistors at their least, with what sensors feel at its most, and all supplies at their most. */
function driven(circuit: Circuit, least: boolean): Circuit {
  const felt = least ? feltBy(circuit) : [];
  const within = felt.reduce(
    (each, name) => withValue(each, name, exactText(surroundingRanges[name].max.value)),
    circuit,
  );
  return circuit.components.reduce((each, component) => {
    const { id } = component;
    if (isContact(component) || isTrack(component)) return each;
    if (isSwitch(component)) return withValue(each, id, 'closed');
    const range = least && 'range' in component && component.range;
    if (!range) return each;
    const [low, high] = [range.min.value, range.max.value];
    const most = isSupply(component) && high.abs().compare(low.abs()) > 0 ? high : low;
    return withValue(each, id, most);
  }, within);
}

/** The measure for a circuit: chosen once, so that the ribbons of a circuit can be compared whatever is turned. */
export const ribbonScale: (circuit: Circuit) => RibbonScale = once((circuit) => {
  const [now, most] = [driven(circuit, false), driven(circuit, true)];
  const within = (read: (solution: Solution, id: string) => number | undefined): number => {
    const present = largest(now, read) || largest(circuit, read);
    return Math.min(Math.max(present, largest(most, read)), room * present || Infinity) || 1;
  };
  const amperes = within((solution, id) => solution.current(id));
  const isLamp = new Set(circuit.components.filter(({ kind }) => kind === 'lamp').map(({ id }) => id));
  const watts = within((solution, id) => (isLamp.has(id) ? solution.power(id) : 0));
  return { perAmpere: Number.isFinite(amperes) ? widest / amperes : widest, brightest: watts };
});

/** The scale for these currents: the circuit's own, unless a ribbon would be too wide to be drawn. */
export function scaleFor(currents: Float64Array, { perAmpere }: RibbonScale): number {
  let most = 0;
  for (const current of currents) most = Math.max(most, Math.abs(current));
  return most * perAmpere > limit ? limit / most : perAmpere;
}
