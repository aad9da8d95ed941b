import { type Component, isMeter, isSwitch, say, thinSpace, valueText } from '../../engine/core.ts';
import { figuresOf, isQuantity, readingOf, spokenQuantity, unitOf, type Snapshot } from '../link/index.ts';

/** The quantity that a component's reading is: a voltmeter's p.d., a current elsewhere. */
const readingName = ({ id, kind }: Component): string => `${kind === 'voltmeter' ? 'V' : 'I'}_${id}`;

/** What a component is called by ear: "R1, 12 ohms, 0.500 amperes". */
export function componentName(component: Component, snapshot: Snapshot, withReading: boolean): string {
  const { id, hidden, condition } = component;
  const state = isSwitch(component)
    ? [say({ code: 'switch state', data: { closed: component.closed } })]
    : [];
  if (condition) state.push(say({ code: 'condition', data: { condition } }));
  const values = hidden ? [] : Object.values(component).filter(isQuantity).map(spokenQuantity);
  const style = isMeter(component) ? ({ as: 'signed' } as const) : {};
  const name = readingName(component);
  const reading = withReading ? [readingOf(snapshot, name, style).spoken] : [];
  const change = withReading && snapshot.comparison?.changeOf(snapshot, name, style)?.spoken;
  return [id, ...state, ...values, ...reading, ...(change ? [change] : [])].join(', ');
}

function ownResistance(meter: Component): string {
  const text = meter.hidden ? '' : valueText(meter);
  return text && `, ${text}`;
}

/** What stands beside a component that changes: a meter's reading, marked where it rose or fell, what a resistor or a supply is set to. */
export function liveText(component: Component, snapshot: Snapshot): string {
  if (!isMeter(component)) return valueText(component);
  const name = readingName(component);
  const { text } = readingOf(snapshot, name, { as: 'signed' });
  const mark = snapshot.comparison?.changeOf(snapshot, name, { as: 'signed' })?.mark ?? '';
  const room = roomFor(component, snapshot).length;
  const marked = mark && text.length < room ? `${text}${thinSpace}${mark}` : text;
  return (text.length > room ? '—' : marked) + ownResistance(component);
}

const roomFor = (component: Component, snapshot: Snapshot): string =>
  `−0.${'0'.repeat(figuresOf(snapshot))}${thinSpace}m${unitOf(readingName(component))}`;

/** As wide as any reading of a meter is likely to be. */
export function meterRoom(component: Component, snapshot: Snapshot): string {
  return roomFor(component, snapshot) + ownResistance(component);
}
