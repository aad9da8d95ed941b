import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import {
  circuitFrom,
  circuitToJSON,
  isContact,
  twinOf,
  withValue,
} from '../../../src/engine/circuit/index.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { forkLines } from '../schematic/random-forks.ts';
import { sameCircuit } from './same-circuit.ts';

test('any circuit with changeover switches is written in a line and in JSON and read back, however they stand', () => {
  fc.assert(
    fc.property(forkLines, fc.array(fc.nat(), { maxLength: 4 }), (line, picks) => {
      const start = parseCircuit(line);
      const contacts = start.components.filter(isContact);
      const circuit = picks.reduce((now, pick) => {
        const { id = '' } = contacts[pick % contacts.length] ?? {};
        return withValue(now, id, 'closed');
      }, start);
      sameCircuit(parseCircuit(formatCircuit(circuit)), circuit, line);
      assert.deepEqual(circuitToJSON(circuitFrom(circuitToJSON(circuit))), circuitToJSON(circuit));
      for (const { id, closed } of circuit.components.filter(isContact)) {
        const other = circuit.components.find((each) => each.id === twinOf(id));
        assert.ok(other && isContact(other) && other.closed !== closed, id);
      }
    }),
    { numRuns: 500 },
  );
});

test('a changeover switch lets a current through one of its contacts at most', () => {
  fc.assert(
    fc.property(forkLines, (line) => {
      const circuit = parseCircuit(line);
      const solution = solveExact(circuit);
      fc.pre(solution.status === 'solved');
      for (const { id, closed } of circuit.components.filter(isContact))
        if (!closed) assert.equal(solution.current(id)?.n, 0n, id);
    }),
    { numRuns: 500 },
  );
});
