import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';

const ohms = fc.constantFrom('1', '2', '3', '4', '6', '10', '12', '4.7', '0.5', '1500', '33');
const reversed = fc.constantFrom('', '', '', ' reversed');
/** A part of a line; it is told its number. */
type Writer = (next: () => number) => string;

const leaf: fc.Arbitrary<Writer> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.tuple(ohms, reversed).map(
      ([value, turned]): Writer =>
        (next) =>
          `R${next()} ${value} Ω${turned}`,
    ),
  },
  {
    weight: 1,
    arbitrary: ohms.map(
      (value): Writer =>
        (next) =>
          `(A${next()} + R${next()} ${value} Ω)`,
    ),
  },
  {
    weight: 1,
    arbitrary: ohms.map(
      (value): Writer =>
        (next) =>
          `(S${next()} closed + R${next()} ${value} Ω)`,
    ),
  },
);

const network = fc.letrec<{ part: Writer }>((tie) => ({
  part: fc.oneof(
    { maxDepth: 3, withCrossShrink: true },
    leaf,
    fc.tuple(fc.constantFrom(' + ', ' ∥ '), fc.array(tie('part'), { minLength: 2, maxLength: 3 })).map(
      ([sign, parts]): Writer =>
        (next) =>
          `(${parts.map((part) => part(next)).join(sign)})`,
    ),
  ),
})).part;

const cell = fc
  .tuple(fc.constantFrom('12 V', '6 V', '1.5 V'), fc.constantFrom('', '', ' r 0.5 Ω', ' r 2 Ω'))
  .map(([emf, inner]) => `B1 ${emf}${inner}`);
/** What drives a circuit; now and then a constant current, with or without an e.m.f. in the same row. */
const driver = fc.oneof(
  { weight: 4, arbitrary: cell },
  { weight: 1, arbitrary: fc.constantFrom('I1 2 A', 'I1 0.25 A', 'I1 -3 A') },
  { weight: 1, arbitrary: cell.map((line) => `I1 0.5 A + ${line}`) },
);

const drivenBy = (drivers: fc.Arbitrary<string>): fc.Arbitrary<Circuit> =>
  fc
    .tuple(network, drivers)
    .map(([build, drives]) => {
      let count = 0;
      return parseCircuit(`${drives} + ${build(() => (count += 1))}`);
    })
    .filter(({ components }) => components.length <= 14);

/** A circuit in series and parallel round one supply or two in a row, with and without resistance inside, here and there an ammeter or a switch. */
export const driven: fc.Arbitrary<Circuit> = drivenBy(driver);

/** The same round one e.m.f. */
export const cellDriven: fc.Arbitrary<Circuit> = drivenBy(cell);

/** Everything that a pupil may be told of a circuit or asked for, with its value as a fraction. */
export function told(circuit: Circuit): ReadonlyMap<string, string> {
  const solution = solveExact(circuit);
  const letters = ({ kind }: Circuit['components'][number]): readonly string[] => {
    if (kind === 'supply') return ['E', 'r', 'I', 'V', 'P', 'Pemf'];
    if (kind === 'source') return ['I', 'V', 'P'];
    return kind === 'resistor' ? ['R', 'I', 'V', 'P'] : ['I'];
  };
  const names = circuit.components.flatMap((one) => letters(one).map((letter) => `${letter}_${one.id}`));
  return new Map(
    [...names, 'R_total', 'I_total', 'P_total'].flatMap((name): [string, string][] => {
      const value = solution.quantity(name);
      return value && !(name.startsWith('r_') && value.equals(0)) ? [[name, value.toFraction()]] : [];
    }),
  );
}
