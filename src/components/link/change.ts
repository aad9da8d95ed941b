import { writeQuantity, type Component } from '../../engine/index.ts';
import type { ChangeDetail } from './events.ts';

/** What an event says of a component that was set; `inside` asks for the internal resistance of a supply. */
export function changeOf(board: string, component: Component, inside = false): ChangeDetail {
  const { id } = component;
  if (component.kind === 'switch') {
    const text = component.closed ? 'closed' : 'open';
    return { board, id, quantity: '', value: Number(component.closed), text, unit: '' };
  }
  const [letter, quantity] =
    component.kind === 'supply'
      ? inside
        ? ['r', component.internalResistance]
        : ['E', component.emf]
      : ['R', 'resistance' in component ? component.resistance : undefined];
  const text = quantity ? writeQuantity(quantity).text : '';
  return {
    board,
    id,
    quantity: `${letter}_${id}`,
    value: Number(quantity?.value ?? 0),
    text,
    unit: quantity?.unit ?? '',
  };
}
