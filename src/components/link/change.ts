import {
  isResistor,
  isSwitch,
  quantity,
  surroundingNames,
  surroundingOf,
  writeQuantity,
  type Circuit,
  type Component,
  type Quantity,
  type Switch,
} from '../../engine/core.ts';
import type { ChangeDetail } from './events.ts';

const changeOfState = (board: string, id: string, on: boolean, text: string): ChangeDetail => ({
  board,
  id,
  quantity: '',
  value: Number(on),
  text,
  unit: '',
});

/** What an event says of a quantity that was turned, by its name: R_R1 of R1, temperature of the temperature. */
export function changeOfQuantity(board: string, id: string, name: string, quantity: Quantity): ChangeDetail {
  const { value, unit } = quantity;
  return { board, id, quantity: name, value: Number(value), text: writeQuantity(quantity).text, unit };
}

/** What an event says of a switch that was opened or closed. */
export function changeOfSwitch(board: string, { id, closed }: Switch): ChangeDetail {
  return changeOfState(board, id, closed, closed ? 'closed' : 'open');
}

/** All that events say of a component: its values that may be turned, its state, what was done to it. */
function aspects(board: string, component: Component): readonly ChangeDetail[] {
  const { id, kind, condition } = component;
  const value = (letter: string, of: Quantity): ChangeDetail =>
    changeOfQuantity(board, id, `${letter}_${id}`, of);
  return [
    ...(isResistor(component) ? [value('R', component.resistance)] : []),
    ...(kind === 'source' ? [value('I', component.current)] : []),
    ...(kind === 'supply'
      ? [value('E', component.emf), value('r', component.internalResistance ?? quantity(0, 'Ω'))]
      : []),
    ...(isSwitch(component) ? [changeOfSwitch(board, component)] : []),
    changeOfState(board, id, condition !== undefined, condition ?? 'intact'),
  ];
}

/** All that events say of a circuit that was one way and is another: its components in their order, then what surrounds it. */
export function changesOf(board: string, was: Circuit, is: Circuit): readonly ChangeDetail[] {
  const all = (circuit: Circuit): readonly ChangeDetail[] => [
    ...circuit.components.flatMap((component) => aspects(board, component)),
    ...surroundingNames.map((name) => changeOfQuantity(board, name, name, surroundingOf(circuit, name))),
  ];
  const before = all(was);
  return all(is).filter(
    ({ value, text }, place) => value !== before[place]?.value || text !== before[place].text,
  );
}
