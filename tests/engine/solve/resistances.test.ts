// What the resistances between all pairs of nodes of a network obey together.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { determinant } from './determinant.ts';
import type { Part } from './random-circuit.ts';
import {
  between,
  exact,
  merged,
  networks,
  nodesOf,
  ohmsOf,
  one,
  part,
  proper,
  total,
  trees,
  zero,
} from './resistor-network.ts';
import { bipartite, complete } from '../schematic/web/graphs.ts';

/** A network with the resistance between any two of its nodes. */
interface Measured {
  readonly list: readonly Part[];
  readonly nodes: readonly string[];
  readonly r: (p: string, q: string) => Fraction;
}

function measured(list: readonly Part[]): Measured {
  const nodes = nodesOf(list);
  const found = new Map<string, Fraction>();
  nodes.forEach((p, k) => {
    for (const q of nodes.slice(k + 1)) found.set(p < q ? p + q : q + p, between(list, p, q));
  });
  return { list, nodes, r: (p, q) => (p === q ? zero : exact(found.get(p < q ? p + q : q + p))) };
}

/** A thousand networks, which all laws here share. */
const samples: readonly Measured[] = fc.sample(networks, 1000).map((list) => measured(proper(list)));

function every(law: (network: Measured) => void): void {
  for (const sample of samples) {
    try {
      law(sample);
    } catch (cause) {
      throw new Error(`Fails for ${JSON.stringify(sample.list)}: ${String(cause)}`, { cause });
    }
  }
}

/** The conductances between the nodes: in the diagonal what meets at each, beside it less what joins two. */
function conductances({ list, nodes }: Pick<Measured, 'list' | 'nodes'>): Fraction[][] {
  return nodes.map((p) =>
    nodes.map((q) =>
      total(
        list
          .filter(({ from, to }) => (from === p || to === p) && (p === q || from === q || to === q))
          .map((each) => one.div(ohmsOf(each)).mul(p === q ? 1 : -1)),
      ),
    ),
  );
}

/** The matrix without the rows and columns of these places. */
const without = (rows: readonly (readonly Fraction[])[], ...places: readonly number[]): Fraction[][] =>
  rows.filter((_, k) => !places.includes(k)).map((row) => row.filter((_, k) => !places.includes(k)));

/** Branches that join all that can be joined without a loop, and the others. */
function spanning(list: readonly Part[]): { readonly tree: Part[]; readonly later: Part[] } {
  const pieces = new Map(nodesOf(list).map((node) => [node, node]));
  const [tree, later]: [Part[], Part[]] = [[], []];
  for (const each of list) {
    const [p = '', q = ''] = [pieces.get(each.from), pieces.get(each.to)];
    (p === q ? later : tree).push(each);
    for (const [node, piece] of pieces) if (piece === q) pieces.set(node, p);
  }
  return { tree, later };
}

const near = (found: number, wanted: number, about: string): void =>
  assert.ok(Math.abs(found - wanted) <= 1e-9 * Math.abs(wanted), `${about}: ${found}, not ${wanted}`);

describe('the resistances between all nodes', () => {
  it('Foster: over all resistors, r/R sums to the number of nodes less one (R. M. Foster 1949)', () => {
    every(({ list, nodes, r }) => {
      const sum = total(list.map((each) => r(each.from, each.to).div(ohmsOf(each))));
      assert.ok(sum.equals(nodes.length - 1), sum.toFraction());
    });
  });

  it('Foster’s second: over pairs of branches uv and vw, r(u,w) over R R′ and all that meets at v sums to n − 2 (from memory)', () => {
    every(({ list, nodes, r }) => {
      const sum = total(
        nodes.flatMap((v) => {
          const there = list.filter(({ from, to }) => from === v || to === v);
          const all = total(there.map((each) => one.div(ohmsOf(each))));
          const end = ({ from, to }: Part): string => (from === v ? to : from);
          return there.flatMap((e, k) =>
            there.slice(k + 1).map((f) => r(end(e), end(f)).div(ohmsOf(e)).div(ohmsOf(f)).div(all)),
          );
        }),
      );
      assert.ok(sum.equals(nodes.length - 2), sum.toFraction());
    });
  });

  it('are distances: never more from s to t than by way of u (Klein and Randić 1993), and the same from either end', () => {
    every(({ list, nodes: [s = '', t = '', ...others], r }) => {
      for (const u of others) {
        assert.ok(r(s, t).compare(r(s, u).add(r(u, t))) <= 0);
        assert.ok(r(s, u).compare(r(s, t).add(r(t, u))) <= 0);
      }
      assert.ok(between(list, t, s).equals(r(s, t)));
    });
  });

  it('are at most the resistor’s own between its ends, and that exactly where nothing else joins them', () => {
    every(({ list, nodes, r }) => {
      for (const own of list) {
        const share = r(own.from, own.to).div(ohmsOf(own));
        const { later } = spanning(list.filter((each) => each !== own));
        assert.ok(share.compare(0) > 0 && share.compare(1) <= 0);
        assert.equal(share.equals(1), list.length - 1 - later.length < nodes.length - 1, own.id);
      }
    });
  });

  it('are the determinants without the rows of both nodes over that without one (G. Kirchhoff 1847)', () => {
    every(({ list, nodes, r }) => {
      const matrix = conductances({ list, nodes });
      const whole = determinant(without(matrix, 0));
      for (const [k, node] of nodes.entries()) {
        assert.ok(determinant(without(matrix, k)).equals(whole), 'whichever node is left out');
        if (k > 0)
          assert.ok(
            determinant(without(matrix, 0, k))
              .div(whole)
              .equals(r(nodes[0] ?? '', node)),
          );
      }
    });
  });

  it('sum to n Σ 1/λ over the eigenvalues of the conductances but 0 (Klein and Randić 1993; Gutman and Mohar 1996, from memory)', () => {
    every((network) => {
      const { nodes, r } = network;
      const rows = conductances(network).map((row) => row.map(Number));
      const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(new Matrix(rows), {
        assumeSymmetric: true,
      });
      const modes = realEigenvalues.map((value, k) => ({ value, along: eigenvectorMatrix.getColumn(k) }));
      const moving = modes.sort((a, b) => a.value - b.value).slice(1);
      const pairs = nodes.flatMap((p, i) => nodes.slice(i + 1).map((q, j) => [p, q, i, i + 1 + j] as const));
      near(
        pairs.reduce((sum, [p, q]) => sum + Number(r(p, q)), 0),
        moving.reduce((sum, { value }) => sum + nodes.length / value, 0),
        'the sum',
      );
      for (const [p, q, i, j] of pairs)
        near(
          moving.reduce((sum, { value, along }) => sum + ((along[i] ?? 0) - (along[j] ?? 0)) ** 2 / value, 0),
          Number(r(p, q)),
          `${p}${q}`,
        );
    });
  });
});

describe('spanning trees', () => {
  /** Σ over trees of the products of conductances, from resistances alone: a branch more makes it 1 + r/R times. */
  function grown(list: readonly Part[]): Fraction {
    const { tree, later } = spanning(list);
    const joined = [...tree];
    let sum = tree.reduce((product, each) => product.div(ohmsOf(each)), one);
    for (const each of later) {
      sum = sum.mul(between(joined, each.from, each.to).div(ohmsOf(each)).add(1));
      joined.push(each);
    }
    return sum;
  }

  it('are as many as the determinant of the conductances without a node, and as adding branch after branch finds (G. Kirchhoff 1847)', () => {
    every(({ list, nodes }) => {
      const sum = determinant(without(conductances({ list, nodes }), 0));
      assert.ok(grown(list).equals(sum));
      if (list.length <= 9) assert.ok(trees(list, nodes.length).equals(sum));
    });
  });

  it('with a branch are the share r/R of all: T with its ends made one is r T', () => {
    every(({ list, nodes, r }) => {
      const all = determinant(without(conductances({ list, nodes }), 0));
      for (const { from, to } of list) {
        const left = nodes.filter((node) => node !== to);
        const joined = conductances({ list: merged(list, from, to), nodes: left });
        assert.ok(determinant(without(joined, 0)).equals(all.mul(r(from, to))));
      }
    });
  });

  const ring = (n: number): (readonly [number, number])[] =>
    Array.from({ length: n }, (_, k) => [k, (k + 1) % n] as const);
  const cube = complete(8).filter(([a, b]) => [1, 2, 4].includes(a ^ b));
  const petersen = [
    ...ring(5),
    ...[0, 1, 2, 3, 4].flatMap((k) => [[k, k + 5] as const, [k + 5, ((k + 2) % 5) + 5] as const]),
  ];
  const wheel = (n: number): (readonly [number, number])[] => [
    ...ring(n),
    ...Array.from({ length: n }, (_, k) => [k, n] as const),
  ];
  // A. Cayley 1889: n^(n − 2); of Kₘₙ m^(n−1) n^(m−1); of a wheel L(2n) − 2 in Lucas numbers (all from memory).
  for (const [name, edges, count] of [
    ['four nodes all joined', complete(4), 16],
    ['seven nodes all joined', complete(7), 16_807],
    ['three nodes joined to four', bipartite(3, 4), 432],
    ['a ring of nine', ring(9), 9],
    ['a wheel of five spokes', wheel(5), 121],
    ['a wheel of eight spokes', wheel(8), 2205],
    ['a cube', cube, 384],
    ['Petersen’s graph', petersen, 2000],
  ] as const)
    it(`of ${name} are ${count}`, () => {
      const list = edges.map(([p, q], k) => part(`R${k + 1}`, `n${p}`, `n${q}`, 1));
      assert.equal(grown(list).toFraction(), `${count}`);
    });
});
