import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  asMarked,
  parseCircuit,
  quantity,
  say,
  type Circuit,
  type Component,
} from '../../../src/engine/index.ts';
import {
  quantities,
  solve,
  solveExact,
  track,
  type Fault,
  type Remark,
} from '../../../src/engine/solve/index.ts';
import { withFaults } from '../circuit/with-faults.ts';
import { anyCircuit, circuit as circuitOf, numRuns, parts, realSupply, resistor } from './random-circuit.ts';

const read = (line: string, ...names: readonly string[]): readonly (string | undefined)[] => {
  const solution = solveExact(parseCircuit(line));
  return names.map((name) => solution.quantity(name)?.toFraction());
};

/** What is secretly wrong, done openly: taken out, or a wire of the same name in its place, a supply of 0 V in that of a supply. */
const openly = (circuit: Circuit): Circuit => ({
  ...circuit,
  components: circuit.components.map((each): Component => {
    const { id, kind, from, to, fault, condition } = each;
    if (!fault || condition) return each;
    if (fault === 'broken') return { ...each, condition: 'broken' };
    const isSupply = kind === 'supply' || kind === 'source';
    return { id, from, to, ...(isSupply ? { kind: 'supply', emf: quantity(0, 'V') } : { kind: 'wire' }) };
  }),
});

const faulty = withFaults(anyCircuit);

describe('a circuit with something secretly wrong', () => {
  it('reads as the real one would: a lamp that conducts nothing, a resistor that is a wire, a dead cell', () => {
    const lamps = 'B1 6 V + L1 8 Ω + L2 8 Ω secretly broken';
    assert.deepEqual(read(lamps, 'I_L1', 'V_L1', 'V_L2', 'P_L2', 'R_L2'), ['0', '0', '6', '0', '8']);
    const wire = 'B1 6 V + R1 4 Ω secretly bridged + R2 8 Ω';
    const names = ['I_R1', 'V_R1', 'P_R1', 'R_R1', 'I_R2', 'V_R2', 'R_total'];
    assert.deepEqual(read(wire, ...names), ['3/4', '0', '0', '4', '3/4', '6', '8']);
    const cells = 'B1 1.5 V + B2 1.5 V r 1 Ω secretly bridged + R1 3 Ω';
    assert.deepEqual(read(cells, 'V_B2', 'E_B2', 'r_B2', 'I_R1', 'P_total'), ['0', '3/2', '1', '1/2', '3/4']);
    assert.deepEqual(read('B1 6 V + S1 open secretly bridged + R1 3 Ω', 'I_R1', 'V_S1'), ['2', '0']);
  });

  it('has the currents and p.d.s of one in which the same is done openly', () => {
    fc.assert(
      fc.property(faulty, (circuit) => {
        const [secret, open] = [solveExact(circuit), solveExact(openly(circuit))];
        assert.equal(secret.status, open.status);
        for (const { id } of circuit.components) {
          for (const name of [`I_${id}`, `V_${id}`])
            assert.equal(secret.quantity(name)?.toFraction(), open.quantity(name)?.toFraction(), name);
        }
      }),
      { numRuns },
    );
  });

  it('keeps every resistance, e.m.f. and internal resistance that is marked', () => {
    fc.assert(
      fc.property(faulty, (circuit) => {
        const [secret, marked] = [solveExact(circuit), solveExact(asMarked(circuit))];
        assert.deepEqual(quantities(circuit), quantities(asMarked(circuit)));
        for (const name of quantities(circuit).filter((each) => /^[REr]_[^_]*\d$/.test(each)))
          assert.equal(secret.quantity(name)?.toFraction(), marked.quantity(name)?.toFraction(), name);
      }),
    );
  });

  it('is solved live as exactly, and followed by a slider', () => {
    fc.assert(
      fc.property(withFaults(parts(realSupply(), resistor()).map((list) => circuitOf(list))), (circuit) => {
        const names = quantities(circuit);
        const id = circuit.components.find(({ kind }) => kind === 'resistor')?.id ?? '';
        const [live, tracker] = [solve(circuit), track(circuit, id, names)];
        const out = new Float64Array(names.length).fill(NaN);
        const resistor = circuit.components.find((each) => each.id === id);
        const ohms = resistor?.kind === 'resistor' ? Number(resistor.resistance.value) : NaN;
        assert.equal(tracker.at(ohms, out), live.status === 'solved');
        if (live.status === 'faulty') return;
        const scale = Math.max(...names.map((name) => Math.abs(live.quantity(name) ?? 0)));
        const exact = solveExact(circuit);
        names.forEach((name, place) => {
          const value = live.quantity(name);
          // A power that no current makes is not written.
          if (value === undefined || (value === 0 && Number.isNaN(out[place]))) return;
          assert.ok(Math.abs(Number(exact.quantity(name)) - value) <= 1e-12 * scale, name);
          assert.ok(Math.abs((out[place] ?? NaN) - value) <= 1e-9 * scale, name);
        });
      }),
      { numRuns },
    );
  });
});

/** What would give a fault away, by what it says. */
const telling: readonly string[] = [
  ...['short circuit', 'supplies in contradiction', 'share undetermined'],
  ...['open loop', 'cut off', 'broken', 'bridged'],
];

/** A loop of its own beside a circuit. Where no path is closed nothing is said of what is cut off: with it, that is said as well. */
const withLoop = (circuit: Circuit): Circuit => ({
  ...circuit,
  components: [
    ...circuit.components,
    ...parseCircuit('B90 1 V + R90 1 Ω').components.map((each) => ({
      ...each,
      from: `loop ${each.from}`,
      to: `loop ${each.to}`,
    })),
  ],
});

describe('what is said of a circuit with something secretly wrong', () => {
  it('names nothing that is not so in its drawing, nor otherwise', () => {
    fc.assert(
      fc.property(faulty, (circuit) => {
        const notes = (of: Circuit): readonly (Fault | Remark)[] => {
          const { faults, remarks } = solveExact(of);
          return [...faults, ...remarks];
        };
        const marked = asMarked(circuit);
        // Beside a fault in the drawing no remarks are made.
        fc.pre(solveExact(marked).status === 'solved' || solveExact(circuit).status === 'faulty');
        const drawn = [...notes(marked), ...notes(withLoop(marked))];
        for (const { code, ids } of notes(circuit).filter((each) => telling.includes(each.code))) {
          const same = drawn.filter((each) => each.code === code).flatMap((each) => each.ids);
          assert.ok(
            ids.every((id) => same.includes(id)),
            `${code}: ${ids.join()}`,
          );
        }
      }),
      { numRuns },
    );
  });

  it('is that there is no path, and not where it is open', () => {
    const [remark] = solve(parseCircuit('B1 6 V + S1 closed secretly broken + L1 8 Ω')).remarks;
    assert.deepEqual(remark, { code: 'open loop', data: { at: [] }, ids: [] });
    const [seen] = solve(parseCircuit('B1 6 V + S1 open + L1 8 Ω secretly broken')).remarks;
    assert.deepEqual(seen?.ids, ['S1']);
  });

  it('is that something is not as it is marked, where it leaves no answer, with the caution of a short circuit', () => {
    const { faults, cautions } = solve(parseCircuit('B1 6 V + (R1 8 Ω secretly bridged ∥ L1 8 Ω)'));
    assert.deepEqual(faults, [{ code: 'not as marked', data: {}, ids: [] }]);
    assert.deepEqual(
      cautions.map(({ code, ids }) => [code, ...ids]),
      [['cell shorted', 'B1']],
    );
    assert.doesNotMatch(faults.map((each) => say(each)).join(), /R1|L1/);
    // What is to be seen in the drawing is said as ever.
    const seen = solve(parseCircuit('B1 6 V + (W1 ∥ R1 8 Ω secretly bridged)'));
    assert.deepEqual(
      seen.faults.map(({ code, ids }) => [code, ...ids]),
      [['short circuit', 'B1', 'W1']],
    );
  });

  it('is a wire across it as ever, which takes the current whatever is wrong inside', () => {
    for (const fault of ['broken', 'bridged']) {
      const line = `B1 6 V + L1 8 Ω bridged secretly ${fault} + L2 8 Ω`;
      assert.deepEqual(read(line, 'I_L2', 'V_L1', 'I_L1', 'I_L1 bridge'), ['3/4', '0', '0', '3/4']);
    }
  });
});
