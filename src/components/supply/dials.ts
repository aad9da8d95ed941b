import { quantity, sourceRange, supplyRanges, type CurrentSource, type Supply } from '../../engine/core.ts';
import type { Dial } from '../slider/index.ts';

/**
 * The quantities of a supply that are turned: the current of one of constant current; else those of the letters E and r that `turns` names; else those for which the circuit
 * states a range; else both. Where none is stated the range is that of the supply at the start, so that no turn moves its ends.
 */
export function dialsOf(
  component: Supply | CurrentSource,
  start: Supply | CurrentSource,
  turns: string,
): readonly Dial[] {
  const { id, hidden } = component;
  if (component.kind === 'source') {
    const range = sourceRange(start.kind === 'source' ? start : component);
    return [{ id, letter: 'I', quantity: component.current, range, hidden }];
  }
  const { emf, internalResistance = quantity(0, 'Ω') } = component;
  const first = start.kind === 'supply' ? start : component;
  const ranges = supplyRanges(first);
  const both: readonly Dial[] = [
    { id, letter: 'E', quantity: emf, range: ranges.emf, hidden },
    { id, letter: 'r', quantity: internalResistance, range: ranges.internalResistance, hidden },
  ];
  const named = both.filter(({ letter }) => turns.split(/\s+/).includes(letter));
  const stated = both.filter(({ range }) => range === first.range || range === first.internalRange);
  return [named, stated].find(({ length }) => length > 0) ?? both;
}
