import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { parseCircuit, seriesParallel, type Tree } from '../../../src/engine/index.ts';
import { along, beside, walk } from '../../../src/components/board/walk.ts';

function treeOf(line: string): Tree {
  const tree = seriesParallel(parseCircuit(line));
  if (tree.kind === 'irreducible') throw new Error(line);
  return tree;
}

const harbour = 'B1 6 V + A1 + (R1 12 Ω ∥ (A2 + L1 8 Ω) ∥ (R2 4 Ω + (R3 6 Ω ∥ R4 9 Ω)))';
const ids = parseCircuit(harbour).components.map(({ id }) => id);
const tree = treeOf(harbour);
const place = fc.constantFrom(...ids);

describe('a walk along the current', () => {
  it('comes to every component once and back to where it began', () => {
    for (const start of ids) {
      const seen: string[] = [];
      let at = start;
      do {
        seen.push(at);
        at = along(tree, at, 1);
      } while (at !== start && seen.length <= ids.length);
      expect(seen).to.have.members(ids).and.have.length(ids.length);
    }
  });

  it('goes from the supply round to the supply in the order of the drawing', () => {
    const round = ids.map((_, steps) => along(tree, 'B1', steps));
    expect(round).to.deep.equal(['B1', 'A1', 'R1', 'A2', 'L1', 'R2', 'R3', 'R4']);
  });

  it('is undone by the step back', () => {
    fc.assert(fc.property(place, (id) => along(tree, along(tree, id, 1), -1) === id));
  });
});

describe('a step from branch to branch', () => {
  it('stays in the innermost group, and comes round', () => {
    expect(beside(tree, 'R3', 1)).to.equal('R4');
    expect(beside(tree, 'R4', 1)).to.equal('R3');
    expect([beside(tree, 'R1', 1), beside(tree, 'A2', 1), beside(tree, 'R2', 1)]).to.deep.equal([
      'A2',
      'R2',
      'R1',
    ]);
    expect(beside(tree, 'R1', -1)).to.equal('R2');
  });

  it('leads to the same place of the next branch, or to its last', () => {
    expect(beside(tree, 'L1', 1)).to.equal('R3');
    expect(beside(tree, 'L1', -1)).to.equal('R1');
  });

  it('leads nowhere where there is only one path', () => {
    expect(beside(tree, 'B1', 1)).to.equal('B1');
    expect(beside(treeOf('B1 6 V + R1 5 Ω'), 'R1', 1)).to.equal('R1');
  });
});

describe('the keys', () => {
  it('lead to components of the circuit, whichever is pressed', () => {
    const key = fc.constantFrom('ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End');
    fc.assert(fc.property(place, key, (id, pressed) => ids.includes(walk(tree, id, pressed) ?? '')));
  });

  it('that mean something else lead nowhere', () => {
    for (const key of ['Tab', 'Enter', ' ', 'a', 'toString', '__proto__']) {
      expect(walk(tree, 'R1', key), key).to.equal(undefined);
    }
  });
});
