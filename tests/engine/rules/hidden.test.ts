import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { checkRules, ruleLine } from '../../../src/engine/rules/index.ts';
import { circuit, type Part } from '../solve/random-circuit.ts';
import { plainParts } from '../solve/random-circuit.ts';
import { plain } from './prose.ts';

/** Values that nothing else in the circuit has. */
const secret = { ohms: '7919', volts: '104.729' };

/** Random circuits in which one component, with a value like no other, is hidden. */
const hiding = fc.tuple(plainParts, fc.nat()).map(([parts, place]) => {
  const one = parts[place % parts.length];
  const hidden: Part[] = parts.map((part) =>
    part !== one
      ? part
      : part.kind === 'supply'
        ? { id: part.id, from: part.from, to: part.to, kind: 'supply', emf: secret.volts, hidden: true }
        : { ...part, resistance: secret.ohms, hidden: true },
  );
  return { id: one?.id ?? '', circuit: circuit(hidden) };
});

describe('a value that is kept from the pupil', () => {
  it('stands in no line, in figures or in words, and cannot be worked out from a line by itself', () => {
    fc.assert(
      fc.property(hiding, ({ circuit, id }) => {
        for (const check of checkRules(circuit)) {
          const { rule, why, symbols, numbers, spoken } = ruleLine(check, { figures: 6 });
          const shown = [rule, why, plain(symbols), plain(numbers), spoken].join('\n');
          assert.doesNotMatch(shown, /(?<![\d.])(?:7\.91900 kΩ|7919(\.0+)? Ω|7\.919(0+)? kΩ)/);
          const operands = numbers.filter(({ kind }) => kind !== 'operator');
          const names = symbols.filter((token) => token.kind === 'symbol');
          operands.forEach((token, index) => {
            const { letter, subscript } = names[index] ?? {};
            if (letter === 'R' && subscript === id) assert.equal(token.kind, 'unknown', shown);
          });
          const unknowns = numbers.filter(({ kind }) => kind === 'unknown').length;
          if (check.substituted?.relation === 'equal') assert.notEqual(unknowns, 1, plain(numbers));
        }
      }),
      { numRuns: 1000 },
    );
  });
});
