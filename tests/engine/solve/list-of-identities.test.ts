// The identities of networks that the engine is tested by, numbered as in the list that they were drawn from, and the test of each.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { it } from 'node:test';

/** Number, name, the file of the test, and how its title begins. */
const list: readonly (readonly [number, string, string, string])[] = [
  [1, 'junction law', 'laws', 'the currents into every node sum to 0'],
  [2, 'loop law', 'laws', 'the p.d.s round every loop sum to 0'],
  [3, 'cut law', 'networks-as-graphs', 'cut law'],
  [4, 'power', 'laws', 'what the supplies give is what everything else takes'],
  [5, 'superposition', 'linearity', 'superposition'],
  [5, 'but not of powers', 'linearity', 'but powers do not add'],
  [6, 'Tellegen', 'identities', 'Tellegen'],
  [7, 'reversal', 'linearity', 'reversing every e.m.f. reverses every current'],
  [7, 'renaming', 'linearity', 'names, the order of the components'],
  [8, 'scaling of resistances', 'linearity', 'scaling: all resistances'],
  [8, 'scaling of e.m.f.s', 'linearity', 'scaling: all e.m.f.s'],
  [9, 'splitting', 'equivalents', 'a resistor split in two'],
  [10, 'Thévenin and Norton', 'equivalents', 'Thévenin'],
  [11, 'Millman', 'equivalents', 'Millman'],
  [12, 'star–delta', 'identities', 'a star of a, b and c is a delta'],
  [13, 'star–mesh', 'networks-as-graphs', 'a star of any number of arms is a mesh'],
  [14, 'substitution', 'networks-as-graphs', 'substitution'],
  [15, 'compensation', 'identities', 'compensation'],
  [16, 'equal potentials', 'equal-potentials', 'wherever they are found'],
  [16, 'balanced bridge', 'equal-potentials', 'of a bridge in balance'],
  [16, 'unbalanced bridge', 'equal-potentials', 'of a bridge out of balance'],
  [17, 'maximum power', 'identities', 'a load takes most'],
  [18, 'Rayleigh', 'identities', 'Rayleigh'],
  [19, 'Rayleigh, strictly where a current flows', 'identities', 'Rayleigh'],
  [20, 'sensitivity (Cohn)', 'networks-as-graphs', 'sensitivity'],
  [21, 'Euler', 'identities', 'Euler'],
  [22, 'own current and p.d.', 'networks-as-graphs', 'own quantities'],
  [22, 'own power', 'one-resistance', 'it takes more power up to what the rest shows'],
  [23, 'sign rule', '../whatif/sign-rule', 'in series the other’s current and p.d. fall'],
  [24, 'bilinear', 'one-resistance', 'every current and p.d. is (a + b R)/(R + R₀)'],
  [25, 'monotonic', 'one-resistance', 'every current and p.d. rises, falls or stays'],
  [26, 'superadditivity', 'networks-as-graphs', 'superadditivity'],
  [26, 'concavity', 'one-resistance', 'is concave'],
  [27, 'no gain', 'identities', 'no gain'],
  [28, 'no Braess', 'networks-as-graphs', 'no Braess'],
  [29, 'voltmeters', 'networks-as-graphs', 'meters: a real voltmeter'],
  [29, 'ammeters', 'one-resistance', 'an ammeter before it reads'],
  [30, 'bounds', 'networks-as-graphs', 'bounds'],
  [30, 'in parallel and in series', 'one-resistance', 'in parallel is less than the smallest'],
  [31, 'Thomson', 'networks-as-graphs', 'Thomson'],
  [
    32,
    'Dirichlet',
    'networks-as-graphs',
    'Thomson: no other flow of 1 A takes less power, and the true one takes r; D',
  ],
  [33, 'reciprocity of e.m.f.s', 'equivalents', 'reciprocity'],
  [34, 'reciprocity of p.d.s', 'networks-as-graphs', 'reciprocity of p.d.s'],
  [35, 'Foster’s first', 'resistances', 'Foster: over all resistors'],
  [36, 'Foster’s second', 'resistances', 'Foster’s second'],
  [37, 'matrix–tree', 'resistances', 'are as many as the determinant'],
  [38, 'r(s,t) by trees', 'networks-as-graphs', 'matrix–tree'],
  [38, 'r(s,t) by determinants', 'resistances', 'are the determinants'],
  [39, 'share of the trees', 'networks-as-graphs', 'matrix–tree: r(s,t) is the trees'],
  [39, 'bridges of the graph', 'resistances', 'are at most the resistor’s own'],
  [40, 'distance', 'resistances', 'are distances'],
  [41, 'eigenvalues', 'resistances', 'sum to n Σ 1/λ'],
  [42, 'series–parallel duality', 'duality', 'are duals'],
  [42, 'p.d.s and currents change places', 'duality', 'change places with their duals'],
  [43, 'planar duality', 'planar-duality', 'share each branch'],
  [44, 'ladders', 'equivalents', 'n sections of 1 Ω along'],
  [44, 'ladders, rung first', 'equivalents', 'with the rung first'],
  [44, 'endless ladders', 'equivalents', 'an endless one'],
  [45, 'counts of equal resistors', 'duality', 'make 1, 2, 4, 9, 22, 53, 131 totals'],
  [45, 'the cube', 'duality', 'the seven-twelfths'],
];

it('lists every identity from 1 to 45, each with tests that there are', () => {
  const numbers = new Set(list.map(([number]) => number));
  assert.deepEqual(
    [...numbers],
    Array.from({ length: 45 }, (_, k) => k + 1),
  );
  const texts = new Map<string, string>();
  for (const [number, name, file, title] of list) {
    const text = texts.get(file) ?? readFileSync(`tests/engine/solve/${file}.test.ts`, 'utf8');
    texts.set(file, text);
    assert.ok(text.includes(`it('${title}`), `${number}, ${name}: no test in ${file} begins with “${title}”`);
  }
});
