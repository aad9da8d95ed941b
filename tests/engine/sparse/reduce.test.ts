import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { graphOf } from '../../../src/engine/solve/graph.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { sparseFlow } from '../../../src/engine/sparse/index.ts';
import { networkOf } from '../../../src/engine/sparse/conductors.ts';
import { reduce } from '../../../src/engine/sparse/reduce.ts';
import { grid, ladder, network, type Edge } from './circuits.ts';
import { leftOver } from './left-over.ts';

/** Ohms from 10⁻⁶ to 10⁹. */
const extreme = fc
  .tuple(fc.integer({ min: 10, max: 99 }), fc.integer({ min: -7, max: 7 }))
  .map(([digits, power]) => Number(`${digits}e${power}`));

/** Grown from one resistor between nodes 0 and 1: again and again one is put in series or in parallel with another one. */
const seriesParallel = fc
  .array(fc.tuple(fc.nat(), fc.boolean(), extreme), { minLength: 1, maxLength: 60 })
  .map((growth) => {
    const edges: Edge[] = [[1, 0, 12]];
    let nodes = 2;
    for (const [pick, isSeries, ohms] of growth) {
      const at = pick % edges.length;
      const [from, to, own] = edges[at] ?? [1, 0, 1];
      if (!isSeries) edges.push([to, from, ohms]);
      else {
        edges[at] = [from, nodes, own];
        edges.push([nodes, to, ohms]);
        nodes += 1;
      }
    }
    return edges;
  });

const anyEdges = fc
  .integer({ min: 4, max: 24 })
  .chain((nodes) =>
    fc.array(fc.tuple(fc.nat({ max: nodes - 1 }), fc.nat({ max: nodes - 1 }), extreme), {
      minLength: nodes,
      maxLength: 4 * nodes,
    }),
  )
  .map((edges) => edges.filter(([from, to]) => from !== to));

const inner = fc.option(extreme, { nil: undefined });

describe('series and parallel reduction of large circuits', () => {
  it('gives every current to 14 figures of its own size, whatever the spread, in what is all series and parallel', () => {
    fc.assert(
      fc.property(seriesParallel, inner, (edges, own) => {
        const circuit = network(edges, 1, own);
        const graph = graphOf(circuit);
        const [flow, exact] = [sparseFlow(graph), solveExact(circuit)];
        assert.equal(reduce(networkOf(graph), true).left.length, 0);
        const truths = circuit.components.map(({ id }) => Number(exact.current(id)));
        const largest = Math.max(...truths.map(Math.abs));
        circuit.components.forEach(({ id, kind }, branch) => {
          const truth = truths[branch] ?? NaN;
          // A share of 2⁻⁸⁰ of the largest is shown as none.
          if (Math.abs(truth) < 2 ** -79 * largest) return;
          const off = Math.abs(flow.current(branch) - truth);
          assert.ok(off <= 1e-14 * Math.abs(truth), `${kind} ${id}: ${flow.current(branch)} is not ${truth}`);
        });
        const left = leftOver(circuit, (at) => flow.current(at));
        assert.ok(left <= 1e-15, `${left} is left over`);
      }),
      { numRuns: 2000 },
    );
  });

  it('leaves only nodes with three neighbours or more, and of as many loops no more', () => {
    fc.assert(
      fc.property(anyEdges, inner, (edges, own) => {
        const { left, tails, heads } = reduce(networkOf(graphOf(network(edges, 1, own))), true);
        const neighbours = new Map<number, Set<number>>();
        left.forEach((_, at) => {
          const [tail = 0, head = 0] = [tails[at], heads[at]];
          neighbours.set(tail, (neighbours.get(tail) ?? new Set()).add(head));
          neighbours.set(head, (neighbours.get(head) ?? new Set()).add(tail));
        });
        for (const [node, near] of neighbours) assert.ok(near.size >= 3, `${near.size} at ${node}`);
      }),
      { numRuns: 2000 },
    );
  });

  it('any network of ohms from 1e-6 to 1e9: what flows in at a node flows out, within 1e-12, and each current is the exact one', () => {
    let irreducible = 0;
    fc.assert(
      fc.property(anyEdges, inner, (edges, own) => {
        const circuit = network(edges, 1, own);
        const graph = graphOf(circuit);
        const [flow, exact] = [sparseFlow(graph), solveExact(circuit)];
        if (reduce(networkOf(graph), true).left.length > 0) irreducible += 1;
        const left = leftOver(circuit, (at) => flow.current(at));
        assert.ok(left <= 1e-12, `${left} is left over`);
        const truths = circuit.components.map(({ id }) => Number(exact.current(id)));
        const largest = Math.max(...truths.map(Math.abs));
        truths.forEach((truth, at) => {
          assert.ok(
            Math.abs(flow.current(at) - truth) <= 1e-12 * largest,
            `${flow.current(at)} is not ${truth}`,
          );
        });
      }),
      { numRuns: 2000 },
    );
    assert.ok(irreducible > 500, `only ${irreducible} were not reduced wholly`);
  });

  it('hands back to each branch of a fan its share to 15 figures, as many as there are', () => {
    const ohms = (at: number): number => 1 + (at % 7);
    const places = Array.from({ length: 10_000 }, (_, at) => at);
    const fan = network(
      places.map((at) => [0, 1, ohms(at)] as const),
      1,
      0.5,
    );
    const flow = sparseFlow(graphOf(fan));
    // In 420ths of a siemens every conductance is a whole number, and so is their sum.
    const siemens = places.reduce((sum, at) => sum + 420 / ohms(at), 0) / 420;
    const volts = 6 / (1 + siemens / 2);
    for (const at of places)
      assert.ok(
        Math.abs(-flow.current(at + 1) * ohms(at) - volts) <= 2e-15 * volts,
        `R${at + 1}: ${-flow.current(at + 1) * ohms(at)} is not ${volts}`,
      );
    assert.ok(leftOver(fan, (at) => flow.current(at)) <= 1e-15);
  });

  it('takes no corner of a square away twice, and all of a ladder', () => {
    assert.equal(reduce(networkOf(graphOf(ladder(500))), true).left.length, 0);
    assert.equal(reduce(networkOf(graphOf(grid(6))), true).left.length, 2 * 6 * 5 - 2 + 1);
  });
});
