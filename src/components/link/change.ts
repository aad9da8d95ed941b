import { isSwitch, writeQuantity, type Component } from '../../engine/core.ts';
import type { ChangeDetail } from './events.ts';

const ofState = (board: string, id: string, on: boolean, text: string): ChangeDetail => ({
  board,
  id,
  quantity: '',
  value: Number(on),
  text,
  unit: '',
});

/** What an event says of a component that was set; `inside` asks for the internal resistance of a supply. */
export function changeOf(board: string, component: Component, inside = false): ChangeDetail {
  const { id } = component;
  if (isSwitch(component)) return ofState(board, id, component.closed, component.closed ? 'closed' : 'open');
  const [letter, quantity] =
    component.kind === 'supply'
      ? inside
        ? ['r', component.internalResistance]
        : ['E', component.emf]
      : ['R', 'resistance' in component ? component.resistance : undefined];
  const text = quantity ? writeQuantity(quantity).text : '';
  const value = Number(quantity?.value ?? 0);
  return { board, id, quantity: `${letter}_${id}`, value, text, unit: quantity?.unit ?? '' };
}

/** All that events say of a component that was one way and is another: its value, what is inside it, what was done to it. */
export function changesOf(board: string, was: Component, is: Component): readonly ChangeDetail[] {
  const aspects = (component: Component): readonly ChangeDetail[] => {
    const { id, kind, condition } = component;
    return [
      changeOf(board, component),
      ofState(board, id, condition !== undefined, condition ?? 'intact'),
      ...(kind === 'supply' ? [changeOf(board, component, true)] : []),
    ];
  };
  const before = aspects(was);
  return aspects(is).filter(
    ({ value, text }, place) => value !== before[place]?.value || text !== before[place].text,
  );
}
