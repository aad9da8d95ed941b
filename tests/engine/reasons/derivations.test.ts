import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { explain, heard, type Derivation, type Lesson } from '../../../src/engine/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { usualCourse } from '../../../src/engine/words/index.ts';
import { driven, told } from '../explain/random-circuit.ts';
import { web } from '../explain/random-web.ts';

const p: Lesson = usualCourse;
const u: Lesson = { ...usualCourse, wording: 'voltage', letter: 'U', decimalSign: ',' };

/** A circuit, and a quantity of it that may be asked. */
const question = fc
  .oneof(driven, driven, web)
  .chain((circuit) => fc.tuple(fc.constant(circuit), fc.constantFrom(...told(circuit).keys())));

/** What is said in sentences: reasons, notes, and why there is no way. */
const sentences = ({ steps, reason }: Derivation): readonly string[] => [
  ...steps.flatMap(({ why, notes = [] }) => [why, ...notes].map((one) => say(one))),
  ...(reason ? [say(reason)] : []),
];
/** What is written in signs. */
const equations = ({ steps }: Derivation): readonly string[] =>
  steps.flatMap(({ equation, rearranged, substituted, text }) => [equation, rearranged, substituted, text]);

/** Blocks that only their brackets tell apart. */
const nested = [
  ['(R1∥(R2+R3))', '((R1∥R2)+R3)'],
  ['(R1+(R2∥R3))', '((R1+R2)∥R3)'],
  ['(R1∥(R2+R3)∥R4)', '(R1∥(R2+(R3∥R4)))', '((R1∥R2)+(R3∥R4))', '((R1∥R2)+R3)', '(((R1∥R2)+R3)∥R4)'],
  ['(R1+(R2∥R3)+R4)', '(R1+(R2∥(R3+R4)))', '((R1+R2)∥(R3+R4))', '(((R1+R2)∥R3)+R4)'],
].flat();

function everyDerivation(course: Lesson, check: (one: Derivation, circuit: Circuit) => void): void {
  fc.assert(
    fc.property(question, ([circuit, find]) => {
      check(explain(circuit, { find, course }), circuit);
    }),
    { numRuns: 150 },
  );
}

void describe('a derivation in sentences', () => {
  void it('has the class’s own word, and never the other one', () => {
    everyDerivation(p, (one) => {
      for (const text of [...sentences(one), ...equations(one).map((each) => heard(each, p))])
        assert.doesNotMatch(text, /voltage/i);
    });
    everyDerivation(u, (one) => {
      for (const text of [...sentences(one), ...equations(one).map((each) => heard(each, u))])
        assert.doesNotMatch(text, /p\.d\./);
    });
  });

  void it('has the class’s own letter and decimal sign', () => {
    everyDerivation(u, (one) => {
      for (const text of equations(one)) {
        assert.doesNotMatch(text, /V(r?)_/);
        assert.doesNotMatch(text, /\d\.\d/);
      }
    });
    everyDerivation(p, (one) => {
      for (const text of equations(one)) assert.doesNotMatch(text, /U(r?)_|\d,\d/);
    });
  });

  void it('is made of whole sentences', () => {
    everyDerivation(p, (one) => {
      for (const text of sentences(one)) {
        assert.match(text, /^[A-Z(].*\.$/s, text);
        assert.doesNotMatch(text, /undefined|NaN| {2}|\s[.,:]|\bof $|, and \./);
      }
    });
  });

  void it('is about components that are there, each once in a step', () => {
    everyDerivation(p, ({ steps }, { components }) => {
      const ids = components.map(({ id }) => id);
      for (const { about, why } of steps) {
        assert.ok(about.length > 0, say(why));
        assert.equal(new Set(about).size, about.length, about.join());
        for (const id of about) assert.ok(ids.includes(id), id);
      }
    });
  });
});

void describe('an equation that is read out', () => {
  void it('has words only: no subscript, no bracket and no sign is left', () => {
    for (const course of [p, u])
      everyDerivation(course, (one) => {
        for (const text of equations(one)) {
          const words = heard(text, course);
          // A bracket round a negative number is heard as what is inside it.
          assert.doesNotMatch(words, /[_()=+−×÷/²√∥]|undefined/, words);
          assert.equal(words.split(' equals ').length, text.split(' = ').length, words);
        }
      });
  });

  void it('calls different quantities differently', () => {
    const letters = ['I', 'V', 'R', 'P', 'W', 'Q'].map((letter) => `${letter}_R1`);
    const supply = ['E', 'V', 'Vr', 'r', 'I', 'P', 'Pemf', 'Pr'].map((letter) => `${letter}_B1`);
    const blocks = ['(R1+R2)', '(R1∥R2)', ...nested].flatMap((block) => [`R_${block}`, `V_${block}`]);
    const others = ['R_total', 'R_loop', 'P_total', 'P_dissipated', 't', 'V_L1', 'V_L1 rated', 'V_L1 bridge'];
    const names = [...new Set([...letters, ...supply, ...blocks, ...others])];
    for (const [course, letter] of [
      [p, 'V'],
      [u, 'U'],
    ] as const) {
      const said = names.map((name) => heard(name.replace(/^V/, letter), course));
      assert.deepEqual(
        said.filter((one, place) => said.indexOf(one) !== place),
        [],
      );
    }
  });
});
