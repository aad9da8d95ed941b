import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { describeCircuit } from '../../../src/engine/schematic/index.ts';
import { drawings } from './random-drawings.ts';

const thin = /\u202f/g;
const words = (line: string): string => describeCircuit(parseCircuit(line)).replace(thin, ' ');

test('a loop is told from the positive terminal round to the supply again', () => {
  assert.equal(
    words('B1 6 V + S1 closed + A1 + R1 [4..40] 12 Ω'),
    'From the positive terminal of battery B1 of 6 V: closed switch S1, then ammeter A1, ' +
      'then variable resistor R1 of 12 Ω (from 4 Ω to 40 Ω), then back to B1.',
  );
});

test('an e.m.f. the other way round makes no cell of a battery', () => {
  assert.match(words('B1 -6 V + R1 12 Ω'), / battery B1 of −6 V: /);
  assert.match(words('B1 -1.5 V + R1 12 Ω'), / cell B1 of −1\.5 V: /);
});

test('branches are numbered, also those within branches, and their joining is told', () => {
  assert.equal(
    words('B1 1.5 V + (R1 1 Ω ∥ (R2 2 Ω + (R3 3 Ω ∥ L1 4 Ω) + R5 5 Ω))'),
    'From the positive terminal of cell B1 of 1.5 V: two parallel branches: branch 1 is resistor R1 of 1 Ω; ' +
      'branch 2 is resistor R2 of 2 Ω, then two parallel branches: branch 2.1 is resistor R3 of 3 Ω; ' +
      'branch 2.2 is lamp L1 of 4 Ω; where branches 2.1 and 2.2 join, resistor R5 of 5 Ω; ' +
      'where branches 1 and 2 join, back to B1.',
  );
});

test('a voltmeter is told across what it is across', () => {
  assert.match(words('B1 6 V + A1 + (R1 2 Ω ∥ V1)'), /resistor R1 of 2 Ω, with voltmeter V1 across it/);
  assert.match(
    words('B1 6 V + A1 + ((R1 2 Ω + R2 3 Ω) ∥ V1)'),
    /with voltmeter V1 across R1 and R2 together/,
  );
  assert.match(
    words('B1 6 V + A1 + (R1 2 Ω ∥ R2 3 Ω ∥ V1)'),
    /two parallel branches, with voltmeter V1 across them: branch 1/,
  );
});

test('a network is told between its terminals', () => {
  assert.equal(
    words('R1 2 Ω + R2 3 Ω'),
    'Between two terminals: resistor R1 of 2 Ω, then resistor R2 of 3 Ω.',
  );
});

test('a bridge is told by its branches and what stands between their middles', () => {
  const bridge = '(R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω)';
  const told =
    'a bridge of two branches, with ammeter A1 between their middles: ' +
    'branch 1 is resistor R1 of 1 Ω, then resistor R2 of 2 Ω; branch 2 is resistor R3 of 3 Ω, then resistor R4 of 4 Ω';
  assert.equal(words(`${bridge}; A1 @p–@q`), `Between two terminals: ${told}.`);
  assert.equal(
    words(`B1 6 V + S1 closed + (${bridge}) + F1 2 A; A1 @q–@p`),
    `From the positive terminal of battery B1 of 6 V: closed switch S1, then ${told}; ` +
      'where branches 1 and 2 join, fuse F1 of 2 A, then back to B1.',
  );
});

test('another web is told part by part between numbered junctions, pieces one after the other', () => {
  assert.equal(
    words('B1 6 V @a–@b; R1 1 Ω @a–@b; R2 2 Ω @a–@c; R3 3 Ω @c–@d; L1 4 Ω @e–@f'),
    '2 pieces that nothing joins. Not series and parallel throughout; with its junctions numbered: ' +
      'from junction 2 to junction 1, battery B1 of 6 V; from junction 2 to junction 1, resistor R1 of 1 Ω; ' +
      'from junction 2 to junction 3, resistor R2 of 2 Ω, then resistor R3 of 3 Ω. ' +
      'Not series and parallel throughout; with its junctions numbered: from junction 2 to junction 1, lamp L1 of 4 Ω.',
  );
});

test('internal resistance and a cell turned round are told, hidden values are not', () => {
  assert.match(
    words('B1 6 V r 1 Ω + B2 1.5 V reversed + R1 5 Ω'),
    /battery B1 of 6 V with internal resistance 1 Ω: cell B2 of 1.5 V, turned round,/,
  );
  const hidden = words('B1 6 V r 1 Ω hidden + R1 [4..40] 17 Ω hidden');
  assert.doesNotMatch(hidden, /\d [VΩ]/);
});

test('of one of several supplies in a branch, or between junctions, it is told which terminal comes first', () => {
  assert.equal(
    words('B1 1.5 V r 1 Ω ∥ B2 1.5 V r 1 Ω ∥ R1 3 Ω'),
    'From the positive terminal of cell B1 of 1.5 V with internal resistance 1 Ω: two parallel branches: ' +
      'branch 1 is cell B2 of 1.5 V with internal resistance 1 Ω, its positive terminal first; ' +
      'branch 2 is resistor R1 of 3 Ω; where branches 1 and 2 join, back to B1.',
  );
  assert.match(
    words('B1 6 V + R1 5 Ω + ((R2 5 Ω + B2 4 V r 1 Ω) ∥ R3 3 Ω)'),
    /branch 1 is resistor R2 of 5 Ω, then battery B2 of 4 V with internal resistance 1 Ω, its positive terminal last;/,
  );
  const web = words(
    'B1 6 V @b–@a; B2 4 V @c–@a; R2 2 Ω @b–@c; R4 2 Ω @b–@d; R5 2 Ω @c–@d; R6 1 Ω @a–@d; R7 1 Ω @d–@e; R8 1 Ω @a–@e; R9 1 Ω @b–@e',
  );
  assert.match(web, /from junction 2 to junction 1, battery B1 of 6 V, its positive terminal last;/);
  assert.match(web, /from junction 1 to junction 3, battery B2 of 4 V, its positive terminal first;/);
});

test('what is taken out, what has a wire across it, and what a supply can be set to are told', () => {
  assert.equal(
    words('B1 [0..12] 6 V + L1 6 Ω broken + B2 1.5 V reversed bridged + R1 5 Ω'),
    'From the positive terminal of variable supply B1 of 6 V (from 0 V to 12 V): lamp L1 of 6 Ω, taken out, ' +
      'then cell B2 of 1.5 V, turned round, with a wire across it, then resistor R1 of 5 Ω, then back to B1.',
  );
});

test('labelled points are told with what meets there', () => {
  const said = words('B1 6 V @y–@X; R1 5 Ω @X–@y; L1 4 Ω @X–@y; S1 open @Z–@y');
  assert.match(said, /\. Point X is where B1, R1 and L1 meet\. Point Z is at an end of S1\.$/);
  assert.doesNotMatch(said, /Point y/);
});

test('every component of any circuit is named once at least', () => {
  for (const { circuit } of drawings().slice(0, 500)) {
    const said = describeCircuit(circuit);
    for (const { id } of circuit.components) assert.match(said, new RegExp(`\\b${id}\\b`));
    assert.doesNotMatch(said, /undefined|NaN|  /);
  }
});
