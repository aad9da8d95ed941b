import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { bridges } from '../../../src/engine/circuit/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { equations, numbers } from '../../../src/engine/solve/equations.ts';
import { climb, loopsThrough, ringed, type Loops } from '../../../src/engine/solve/forest.ts';
import { graphOf, type Graph } from '../../../src/engine/solve/graph.ts';
import { inUnits } from '../../../src/engine/solve/units.ts';
import { anyCircuit, numRuns, spreadCircuit } from './random-circuit.ts';

/** What loops lead through a branch: the row and the way of each, the last first. */
function through({ lasts, befores, rows, ways }: Loops, branch: number): [row: number, way: number][] {
  const found: [number, number][] = [];
  for (let at = lasts[branch]; at; at = befores[at]) found.push([rows[at] ?? NaN, ways[at] ?? NaN]);
  return found;
}

/** Of each loop its way through each branch: 1 along, −1 against, 0 not at all. */
function ways(graph: Graph): number[][] {
  const loops = loopsThrough(graph);
  const all = graph.chords.map(() => graph.tails.map(() => 0));
  graph.tails.forEach((_, branch) => {
    for (const [row, way] of through(loops, branch)) {
      const loop = all[row] ?? [];
      assert.equal(loop[branch], 0, 'a loop goes through a branch once');
      loop[branch] = way;
    }
  });
  return all;
}

/** What is added up over the branches. */
const over = (graph: Graph, value: (branch: number) => number): number =>
  graph.tails.reduce((sum, _, branch) => sum + value(branch), 0);

const graphs = anyCircuit.map((circuit) => graphOf(bridges(circuit)));
const spreadGraphs = spreadCircuit.map((circuit) => graphOf(bridges(circuit)));

describe('the forest of the smallest resistances', () => {
  it('joins what conductors join, and nothing else, with one branch fewer than nodes in each piece', () => {
    fc.assert(
      fc.property(graphs, ({ tails, heads, ohms, up, roots, order, chords, slack }) => {
        const pieces = new Set(roots).size;
        assert.equal(up.filter((branch) => branch >= 0).length, roots.length - pieces);
        const conducting = ohms.filter((resistance) => resistance < Infinity).length;
        assert.equal(conducting, roots.length - pieces + chords.length + slack.length);
        tails.forEach((tail, branch) => {
          if (ohms[branch] !== Infinity) assert.equal(roots[tail], roots[heads[branch] ?? -1]);
        });
        assert.deepEqual(
          [...order].sort((one, other) => one - other),
          [...roots.keys()],
        );
      }),
      { numRuns },
    );
  });

  it('has no branch with more resistance than a chord whose loop it lies on', () => {
    fc.assert(
      fc.property(spreadGraphs, (graph) => {
        ways(graph).forEach((way, loop) => {
          const chord = graph.chords[loop] ?? -1;
          way.forEach((through, branch) => {
            if (through) assert.ok((graph.ohms[branch] ?? NaN) <= (graph.ohms[chord] ?? NaN));
          });
        });
      }),
      { numRuns },
    );
  });

  it('is climbed from the roots: each node once, after the one below it', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const reached = new Set(graph.roots);
        climb(graph, (node, below, branch, isUp) => {
          assert.ok(reached.has(below) && !reached.has(node));
          const [tail, head] = [graph.tails[branch], graph.heads[branch]];
          assert.deepEqual(isUp ? [tail, head] : [head, tail], [below, node]);
          reached.add(node);
        });
        assert.equal(reached.size, graph.roots.length);
      }),
      { numRuns },
    );
  });
});

describe('loops', () => {
  it('are told of each branch in the order of their rows, the last first', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const loops = loopsThrough(graph);
        graph.tails.forEach((_, branch) => {
          const own = through(loops, branch).map(([row]) => row);
          assert.deepEqual(
            own,
            [...new Set(own)].sort((one, other) => other - one),
          );
        });
      }),
      { numRuns },
    );
  });

  it('come back to where they began: as many of their branches run into a node as out of it', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        for (const way of ways(graph))
          for (const node of graph.order)
            assert.equal(
              over(graph, (branch) => {
                const into = Number(graph.heads[branch] === node) - Number(graph.tails[branch] === node);
                return into * (way[branch] ?? NaN);
              }),
              0,
            );
      }),
      { numRuns },
    );
  });

  it('have a chord of their own each, which they run along', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const all = ways(graph);
        graph.chords.forEach((chord, loop) =>
          all.forEach((way, other) => assert.equal(way[chord], loop === other ? 1 : 0)),
        );
      }),
      { numRuns },
    );
  });

  it('lie on what is marked as lying on a loop, and nowhere else', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const all = ways(graph);
        const marked = ringed(graph, graph.chords);
        graph.tails.forEach((_, branch) =>
          assert.equal(
            marked[branch] === 1,
            all.some((way) => way[branch] !== 0),
          ),
        );
      }),
      { numRuns },
    );
  });
});

describe('loop equations', () => {
  it('have the resistances that two loops share, and the e.m.f. round each (Maxwell 1873; from memory)', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const [all, found, n] = [ways(graph), numbers(graph, loopsThrough(graph)), graph.chords.length];
        const near = (one: number, other: number): void =>
          assert.ok(Math.abs(one - other) <= 1e-13 * Math.max(1, Math.abs(other)));
        all.forEach((way, row) => {
          all.slice(row).forEach((other, more) => {
            const shared = over(graph, (branch) => {
              const through = (way[branch] ?? NaN) * (other[branch] ?? NaN);
              return through ? through * (graph.ohms[branch] ?? NaN) : 0;
            });
            near(found[row * (n + 1) + row + more] ?? NaN, shared);
          });
          const emf = over(graph, (branch) => (way[branch] ?? NaN) * (graph.volts[branch] ?? NaN));
          near(found[row * (n + 1) + n] ?? NaN, emf);
        });
      }),
      { numRuns },
    );
  });

  it('are said term by term as they are written in numbers, only in rows up to their column', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const loops = loopsThrough(graph);
        const n = graph.chords.length;
        const sums = new Map<number, number>();
        equations(loops, graph.ohms, graph.volts, n, (row, column, value = NaN, sign) => {
          assert.ok(row <= column && column <= n);
          const place = row * (n + 1) + column;
          sums.set(place, (sums.get(place) ?? 0) + sign * value);
        });
        const found = numbers(graph, loops);
        for (let place = 0; place < n * (n + 1); place++) assert.equal(found[place], sums.get(place) ?? 0);
      }),
      { numRuns },
    );
  });
});

describe('one unit for all values', () => {
  const value = fc.option(
    fc
      .tuple(fc.integer({ min: -10_000, max: 10_000 }), fc.integer({ min: 1, max: 40 }))
      .map(([n, d]) => new Fraction(n, d)),
    { nil: undefined, freq: 4 },
  );

  it('is the largest in which all are whole numbers', () => {
    fc.assert(
      fc.property(fc.array(value, { maxLength: 5 }), (values) => {
        const [unit, counts] = inUnits(values, Infinity);
        const bottoms = values.map((each) => Number(each?.d ?? 1n));
        values.forEach((each, at) =>
          assert.equal(counts[at], each ? Number(each.mul(unit)) : Infinity, String(each)),
        );
        for (const bottom of bottoms) assert.equal(unit % bottom, 0);
        const smaller = Array.from({ length: 12 }, (_, k) => k + 2).map((k) => unit / k);
        for (const other of smaller.filter(Number.isInteger))
          assert.ok(bottoms.some((bottom) => other % bottom !== 0));
      }),
      { numRuns },
    );
  });

  it('is none where it would be too small, and the values stay as they are', () => {
    const primes = [94_906_249, 94_906_247, 3].map((bottom) => new Fraction(1, bottom));
    assert.deepEqual(inUnits(primes, 0), [NaN, primes.map(Number)]);
    assert.deepEqual(inUnits([undefined, new Fraction(7)], 0), [1, [0, 7]]);
  });
});
