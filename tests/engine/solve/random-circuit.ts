import fc from 'fast-check';
import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';

/** A component of the JSON form, without its id and its nodes. */
type Kind = Readonly<Record<string, unknown>> & { readonly kind: string };

/** A component of the JSON form. */
export type Part = Kind & { readonly id: string; readonly from: string; readonly to: string };

/** How many random circuits each law is tried on. */
export const numRuns = 1000;

/** A positive value: k/m with k to 30 and m to 3. */
export const positive: fc.Arbitrary<string> = fc
  .tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 3 }))
  .map(([k, m]) => `${k}/${m}`);

/** A positive value from 10⁻⁵ to 10⁵ and a little beyond. */
export const spread: fc.Arbitrary<string> = fc
  .tuple(fc.integer({ min: 10, max: 999 }), fc.integer({ min: -6, max: 3 }))
  .map(([k, power]) => `${k}e${power}`);

const emf = fc.integer({ min: -24, max: 24 }).map((half) => `${half}/2`);

/** A supply of constant current. */
export const source: fc.Arbitrary<Kind> = fc
  .integer({ min: -12, max: 12 })
  .map((fifth) => ({ kind: 'source', current: `${fifth}/5` }));

/** A resistor of the given values. */
export const resistor = (ohms: fc.Arbitrary<string> = positive): fc.Arbitrary<Kind> =>
  ohms.map((resistance) => ({ kind: 'resistor', resistance }));

/** A supply with resistance inside. */
export const realSupply = (ohms: fc.Arbitrary<string> = positive): fc.Arbitrary<Kind> =>
  fc.record({ kind: fc.constant('supply'), emf, internalResistance: ohms });

/** Anything there is, ideal or real, with nothing taken out and nothing bridged. */
export const intact = (ohms: fc.Arbitrary<string> = positive): fc.Arbitrary<Kind> =>
  fc.oneof(
    { weight: 8, arbitrary: resistor(ohms) },
    { weight: 3, arbitrary: realSupply(ohms) },
    { weight: 1, arbitrary: emf.map((volts) => ({ kind: 'supply', emf: volts })) },
    { weight: 1, arbitrary: source },
    { weight: 1, arbitrary: fc.constant({ kind: 'lamp', ratedVoltage: '6', ratedPower: '2.4' }) },
    { weight: 1, arbitrary: ohms.map((resistance) => ({ kind: 'heater', resistance })) },
    { weight: 1, arbitrary: ohms.map((resistance) => ({ kind: 'thermistor', resistance })) },
    {
      weight: 1,
      arbitrary: fc.boolean().map((blown) => ({ kind: 'fuse', ratedCurrent: 2, resistance: '1/50', blown })),
    },
    { weight: 2, arbitrary: fc.boolean().map((closed) => ({ kind: 'switch', closed })) },
    { weight: 1, arbitrary: fc.boolean().map((closed) => ({ kind: 'push', closed })) },
    { weight: 1, arbitrary: fc.constant({ kind: 'ammeter' }) },
    { weight: 1, arbitrary: ohms.map((resistance) => ({ kind: 'ammeter', resistance })) },
    { weight: 1, arbitrary: fc.constant({ kind: 'voltmeter' }) },
    { weight: 1, arbitrary: ohms.map((resistance) => ({ kind: 'voltmeter', resistance })) },
    { weight: 1, arbitrary: fc.constant({ kind: 'wire' }) },
  );

/** Anything there is; now and then it is taken out, or has a wire across it. */
export const anything = (ohms: fc.Arbitrary<string> = positive): fc.Arbitrary<Kind> =>
  fc
    .tuple(intact(ohms), fc.nat({ max: 19 }))
    .map(([kind, draw]) => (draw < 2 ? { ...kind, condition: draw ? 'broken' : 'bridged' } : kind));

/** The letter that the label of a kind starts with. */
export const letters: Readonly<Record<string, string>> = {
  supply: 'B',
  source: 'I',
  resistor: 'R',
  lamp: 'L',
  heater: 'H',
  led: 'LED',
  diode: 'D',
  thermistor: 'T',
  ldr: 'LDR',
  fuse: 'F',
  push: 'S',
  switch: 'S',
  ammeter: 'A',
  voltmeter: 'V',
  wire: 'W',
};
const nodes = ['a', 'b', 'c', 'd', 'e', 'f'];

/**
 * Components between two to six nodes: a random tree that joins them all, with up to seven more between any two; the first is of the
 * kind `first`, the others of the kind `rest`.
 */
export function parts(first: fc.Arbitrary<Kind>, rest: fc.Arbitrary<Kind>): fc.Arbitrary<Part[]> {
  const end = fc.nat({ max: 59 });
  return fc
    .tuple(
      first,
      fc.integer({ min: 2, max: nodes.length }),
      fc.array(fc.tuple(rest, end, end), { minLength: 5, maxLength: 12 }),
    )
    .map(([one, count, others]) => {
      const drawn = [[one, 0, 1] as const, ...others];
      return drawn.map(([kind, from, to], k) => {
        // The tree: component k joins node k + 1 to a node before it.
        const ends = k < count - 1 ? [k + 1, from % (k + 1)] : [from % count, to % count];
        const [tail = '', head = ''] = (to % 2 ? ends : ends.reverse()).map((end) => nodes[end]);
        return { ...kind, id: `${letters[kind.kind] ?? ''}${k + 1}`, from: tail, to: head };
      });
    });
}

/** The circuit of components. */
export function circuit(components: readonly Part[], terminals?: readonly [string, string]): Circuit {
  return circuitFrom(terminals ? { version: 1, components, terminals } : { version: 1, components });
}

/** A supply of either sort. */
export const driver = (ohms?: fc.Arbitrary<string>): fc.Arbitrary<Kind> =>
  fc.oneof({ weight: 4, arbitrary: realSupply(ohms) }, { weight: 1, arbitrary: source });

/** Random circuits with nothing taken out and nothing bridged, with one supply at least. Some have faults. */
export const intactCircuit: fc.Arbitrary<Circuit> = parts(driver(), intact()).map((list) => circuit(list));

/** Random circuits of anything, with one supply at least. Some have faults. */
export const anyCircuit: fc.Arbitrary<Circuit> = parts(driver(), anything()).map((list) => circuit(list));

/** Random circuits whose resistances are spread over more than 10¹⁰. */
export const spreadCircuit: fc.Arbitrary<Circuit> = parts(driver(spread), anything(spread)).map((list) =>
  circuit(list),
);

/** Random circuits of resistors and supplies with resistance inside: they have an answer, whatever the e.m.f.s. */
export const plainParts: fc.Arbitrary<Part[]> = parts(
  realSupply(),
  fc.oneof({ weight: 3, arbitrary: resistor() }, { weight: 1, arbitrary: realSupply() }),
);
