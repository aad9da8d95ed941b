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

/** A circuit in series and parallel round one supply, with and without resistance inside, here and there an ammeter or a switch. */
export const driven: fc.Arbitrary<Circuit> = fc
  .tuple(network, fc.constantFrom('', '', ' r 0.5 Ω', ' r 2 Ω'), fc.constantFrom('12 V', '6 V', '1.5 V'))
  .map(([build, inner, emf]) => {
    let count = 0;
    return parseCircuit(`B1 ${emf}${inner} + ${build(() => (count += 1))}`);
  })
  .filter(({ components }) => components.length <= 14);

/** Everything that a pupil may be told of a circuit or asked for, with its value as a fraction. */
export function told(circuit: Circuit): ReadonlyMap<string, string> {
  const solution = solveExact(circuit);
  const letters = ({ kind }: Circuit['components'][number]): readonly string[] => {
    if (kind === 'supply') return ['E', 'r', 'I', 'V', 'P', 'Pemf'];
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
