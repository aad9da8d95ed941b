import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { circuitFrom, CircuitFormatError } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { checkRules } from '../../../src/engine/rules/index.ts';
import { en, say } from '../../../src/engine/words/index.ts';

void describe('the sentences', () => {
  void it('are found by code and filled with data', () => {
    const path = ['S1', 'A1'];
    assert.match(
      say({ code: 'short circuit', data: { supplies: ['B1'], path } }),
      /^B1 is short-circuited through S1 and A1/,
    );
  });

  void it('are an error’s message, in English', () => {
    assert.throws(
      () => circuitFrom(7),
      (error) => error instanceof CircuitFormatError && error.message === 'Expected an object, found 7.',
    );
  });

  void it('take the names that every object has for names like others', () => {
    for (const name of Object.getOwnPropertyNames(Object.prototype)) {
      const of = (letter: string, of: string): string =>
        say({ code: 'measures', data: { letter, of, wording: 'p.d.', ohms: '' } });
      // An underscore stands between two ends.
      if (!name.includes('_')) assert.equal(of('I', name), `current through ${name}`);
      assert.equal(of(name, 'R1'), 'p.d. across R1');
    }
  });

  void it('are said of a rule’s check too: why it applies, or why it does not', () => {
    for (const check of checkRules(parseCircuit('B1 6 V + S1 open + R1 12 Ω + (R2 6 Ω ∥ R3 6 Ω)')))
      assert.equal(say(check), say(check.why));
  });

  void it('are said in another language by the same codes', () => {
    const loud = { tag: 'en', sentences: { ...en.sentences, 'no path': () => 'NO PATH' } };
    assert.equal(say({ code: 'no path', data: {} }, loud), 'NO PATH');
  });
});
