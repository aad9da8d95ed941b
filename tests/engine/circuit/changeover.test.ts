import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import {
  circuitFrom,
  settingOf,
  withValue,
  wrongTwins,
  type Circuit,
} from '../../../src/engine/circuit/index.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';

/** The light of the quay's steps, switched at the top and at the bottom. */
const stairs = parseCircuit(
  'B1 6 V + ((changeover S1a closed + changeover S2a closed) ∥ (changeover S1b + changeover S2b)) + L1 8 Ω',
);
const states = (circuit: Circuit): string =>
  circuit.components.flatMap((each) => (each.kind === 'changeover' ? [settingOf(each)] : [])).join(' ');
const lit = (circuit: Circuit): boolean => solveExact(circuit).quantity('I_L1')?.equals(0) === false;

describe('a changeover switch', () => {
  it('closes one contact as the other opens, whichever is set', () => {
    assert.equal(states(stairs), 'closed closed open open');
    assert.equal(states(withValue(stairs, 'S1b', 'closed')), 'open closed closed open');
    assert.equal(states(withValue(stairs, 'S1a', false)), 'open closed closed open');
    assert.equal(states(withValue(withValue(stairs, 'S2a', 'open'), 'S2b', 'open')), states(stairs));
    assert.equal(states(withValue(stairs, 'S1a', 'closed')), states(stairs));
  });

  it('turns a lamp on and off from either of two places: the stairs (common practice)', () => {
    let now = stairs;
    for (const id of ['S1a', 'S2a', 'S2b', 'S1b', 'S1a']) {
      const before = lit(now);
      now = withValue(now, id, settingOf(now.components.find((each) => each.id === id)!) === 'open');
      assert.equal(lit(now), !before, id);
    }
  });

  it('is written as its two contacts, in a line and in JSON, and read back', () => {
    const line = 'B1 6 V + ((changeover S1a closed + L1 8 Ω) ∥ (changeover S1b open + L2 8 Ω))';
    assert.equal(formatCircuit(parseCircuit(line)), line);
    assert.equal(formatCircuit(parseCircuit(line.replace(' open', ''))), line);
  });

  it('may be damaged at one contact, openly or secretly, and still turns', () => {
    const stuck = withValue(stairs, 'S1b', 'secretly bridged');
    assert.ok(lit(withValue(withValue(stuck, 'S2b', 'closed'), 'S1a', 'closed')));
    const out = withValue(stairs, 'S1a', 'broken');
    assert.equal(lit(out), false);
    assert.equal(states(withValue(out, 'S1b', 'closed')), 'open broken closed closed open');
  });

  const contact = (id: string, from: string, to: string, closed: boolean): object => ({
    ...{ id, kind: 'changeover', from, to, closed },
  });
  const refusal = (...contacts: object[]): unknown => {
    const supply = { id: 'B1', kind: 'supply', from: 'p', to: 'n', emf: 6 };
    try {
      return circuitFrom({ version: 1, components: [supply, ...contacts] });
    } catch (error) {
      const { code, path } = error as { code: string; path: string };
      return `${code} at ${path}`;
    }
  };

  it('has two contacts that meet, one closed and one open, or is refused', () => {
    const one = contact('S1a', 'p', 'q', true);
    assert.equal(refusal(one), 'contact missing at components[1]');
    assert.equal(refusal(contact('S1', 'p', 'q', true)), 'contact missing at components[1]');
    assert.equal(refusal(contact('S1b', 'p', 'q', true)), 'contact missing at components[1]');
    assert.equal(refusal(one, contact('S1b', 'r', 's', false)), 'contacts apart at components[1]');
    assert.equal(refusal(contact('S1b', 'p', 'r', true), one), 'contacts alike at components[2]');
    assert.equal(
      refusal(contact('S1a', 'p', 'q', false), contact('S1b', 'p', 'r', false)),
      'contacts alike at components[1]',
    );
    assert.equal(
      refusal(one, { id: 'S1b', kind: 'switch', from: 'p', to: 'r' }),
      'contact missing at components[1]',
    );
    for (const [from, to] of [
      ['p', 'r'],
      ['r', 'p'],
      ['q', 'r'],
      ['r', 'q'],
      ['q', 'p'],
    ] as const)
      assert.equal(typeof refusal(one, contact('S1b', from, to, false)), 'object', `${from}–${to}`);
    assert.deepEqual(wrongTwins(stairs.components), []);
  });
});
