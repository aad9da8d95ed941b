import { circuitFrom, type Circuit } from '../../../src/engine/index.ts';

const supply = { id: 'B1', kind: 'supply', from: 'a', to: 'z', emf: '6' };
const fog = {
  id: 'R1',
  kind: 'resistor',
  from: 'b',
  to: 'z',
  resistance: '12',
  range: { min: '4', max: '40', step: '1' },
};
const lamp = { id: 'L1', kind: 'lamp', from: 'c', to: 'z', resistance: '8' };
const ammeters = [
  { id: 'A1', kind: 'ammeter', from: 'a', to: 'b' },
  { id: 'A2', kind: 'ammeter', from: 'b', to: 'c' },
];

/** The quay lights: a supply and an ammeter, then a control beside a second ammeter with a lamp. */
export const quay = (): Circuit => circuitFrom({ version: 1, components: [supply, ...ammeters, fog, lamp] });

/** The bilge pump: a switch, a control and a lamp, one after the other. */
export const pump = (): Circuit =>
  circuitFrom({
    version: 1,
    components: [
      supply,
      { id: 'S1', kind: 'switch', from: 'a', to: 'b', closed: true },
      { ...fog, from: 'b', to: 'c' },
      lamp,
    ],
  });

/** A bridge of five resistors: neither series nor parallel. */
export const bridge = (): Circuit => {
  const resistor = (id: string, from: string, to: string, resistance: string): object => ({
    id,
    kind: 'resistor',
    from,
    to,
    resistance,
  });
  return circuitFrom({
    version: 1,
    components: [
      supply,
      resistor('R1', 'a', 'p', '10'),
      resistor('R2', 'a', 'q', '20'),
      resistor('R3', 'p', 'z', '30'),
      resistor('R4', 'q', 'z', '40'),
      resistor('R5', 'p', 'q', '50'),
    ],
  });
};
