import {
  exactText,
  feltBy,
  isContact,
  isSwitch,
  positions,
  solve,
  surroundingRanges,
  withValue,
  type Circuit,
  type Quantity,
  type Solution,
} from '../../engine/core.ts';
import { once } from '../link/index.ts';

/** A circuit with its switches and sliders somewhere, and what it reads there. */
export interface Extreme {
  readonly circuit: Circuit;
  readonly readings: Solution;
}

function closed(circuit: Circuit): Circuit {
  const open = circuit.components.filter(
    (component) => isSwitch(component) && !isContact(component) && !component.closed,
  );
  return open.reduce((each, { id }) => withValue(each, id, 'closed'), circuit);
}

/** A circuit as it is, and with each slider in turn at either end, those of what its sensors feel too. */
function turned(circuit: Circuit): readonly Circuit[] {
  const ends = circuit.components.flatMap((component) => {
    const range = 'range' in component && component.range;
    const inside = 'internalRange' in component && component.internalRange;
    const at =
      (word: string) =>
      ({ value }: Quantity) =>
        withValue(circuit, component.id, word + exactText(value));
    return [
      ...(range ? [range.min, range.max].map(at('')) : []),
      ...(inside ? [inside.min, inside.max].map(at('r ')) : []),
    ];
  });
  const elsewhere = feltBy(circuit).flatMap((name) =>
    [surroundingRanges[name].min, surroundingRanges[name].max].map(({ value }) =>
      withValue(circuit, name, exactText(value)),
    ),
  );
  return [circuit, ...ends, ...elsewhere];
}

/** Where the readings of a circuit are likely to go furthest: its sliders at their ends, its switches closed, each changeover switch at either contact. Worked out once. */
export const extremesOf: (start: Circuit) => readonly Extreme[] = once((start) => {
  const circuits = new Set([start, ...positions(closed(start))]);
  return [...circuits].flatMap(turned).map((circuit) => ({ circuit, readings: solve(circuit) }));
});
