import {
  feltBy,
  isResistor,
  isSecondTwin,
  quantity,
  sourceRange,
  supplyRanges,
  surroundingOf,
  surroundingRanges,
  type Circuit,
  type Quantity,
  type Range,
} from '../../engine/core.ts';
import type { Said } from '../../engine/reasons/index.ts';

/** What a graph goes along: something that can be turned. */
export interface Turned {
  /** As the page names it, and as `sweep` does: R1, B1, r_B1, temperature. */
  readonly what: string;
  /** The name of its quantity: R_R1, E_B1, r_B1, temperature; V_L1 for the characteristic of L1. */
  readonly name: string;
  /** Where it stands. */
  readonly now: Quantity;
  readonly range: Range;
  /** Whether the circuit states its range, or feels it: nothing else has to be named then. */
  readonly stated: boolean;
  /** Where a characteristic is drawn, its component alone on a supply that is turned: what is followed instead of the board's circuit. */
  readonly alone?: Circuit;
}

/** All that can be turned; ranges that are not stated are those of the start, so that no turn moves their ends. */
function allTurned(circuit: Circuit, start: Circuit): readonly Turned[] {
  const components = circuit.components.flatMap((each, place): Turned[] => {
    const { id, hidden } = each;
    if (hidden) return [];
    if (isResistor(each) && each.range) {
      const stated = !isSecondTwin(each);
      return [{ what: id, name: `R_${id}`, now: each.resistance, range: each.range, stated }];
    }
    const first = start.components[place];
    if (each.kind === 'source') {
      const range = sourceRange(first?.kind === 'source' ? first : each);
      const stated = each.range !== undefined;
      return [{ what: id, name: `I_${id}`, now: each.current, range, stated }];
    }
    if (each.kind !== 'supply') return [];
    const ranges = supplyRanges(first?.kind === 'supply' ? first : each);
    const { emf, range, internalResistance = quantity(0, 'Ω'), internalRange } = each;
    return [
      { what: id, name: `E_${id}`, now: emf, range: ranges.emf, stated: range !== undefined },
      {
        what: `r_${id}`,
        name: `r_${id}`,
        now: internalResistance,
        range: ranges.internalResistance,
        stated: internalRange !== undefined,
      },
    ];
  });
  const felt = feltBy(circuit).map((name): Turned => {
    const now = surroundingOf(circuit, name);
    return { what: name, name, now, range: surroundingRanges[name], stated: true };
  });
  return [...components, ...felt];
}

/** What a graph goes along: what is named, else the only thing that can be turned; or why there is none. */
export function turnedOf(circuit: Circuit, start: Circuit, against: string): Turned | Said {
  const all = allTurned(circuit, start);
  const meant = against
    ? all.filter(({ what, name }) => against === what || against === name)
    : all.filter(({ stated }) => stated);
  const [only] = meant;
  if (only && meant.length === 1) return only;
  if (circuit.components.some((each) => each.id === against && isResistor(each)))
    return { code: 'cannot be turned', data: { id: against } };
  const stated = all.filter((each) => each.stated);
  const names = (stated.length > 0 ? stated : all).map(({ what }) => what);
  return { code: 'which is turned', data: { found: against, names } };
}
