import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { checkRules } from '../../../src/engine/rules/index.ts';
import { circuitOf, titlesOf, workedExamples } from '../solve/reference.ts';
import { prose } from './prose.ts';
import { linesOfBooks } from './table-of-books.ts';

describe('the lines of a worked example', () => {
  for (const { id, lines } of linesOfBooks) {
    const example = workedExamples.find((one) => one.id === id);
    assert.ok(example, id);
    it(`say what is found in ${titlesOf(example)} (${id})`, () => {
      const said = checkRules(circuitOf(example)).map((check) => prose(check));
      for (const line of lines) assert.ok(said.includes(line), `${line}\nis not among\n${said.join('\n')}`);
    });
  }

  it('have the exact answers of all examples as their numbers', () => {
    let compared = 0;
    for (const example of workedExamples) {
      const supported = ['supply', 'resistor', 'switch', 'ammeter', 'voltmeter'];
      if (!example.circuit.components.every(({ kind }) => supported.includes(kind))) continue;
      const terms = checkRules(circuitOf(example)).flatMap(
        ({ substituted }) => substituted?.sides.flat() ?? [],
      );
      for (const { quantity, exact } of example.asked) {
        if (exact === null) continue;
        for (const { value } of terms.filter(({ name }) => name === quantity)) {
          assert.ok(new Fraction(exact).abs().equals(value), `${example.id} ${quantity}`);
          compared += 1;
        }
      }
    }
    assert.ok(compared > 300, `${compared} numbers compared`);
  });
});
