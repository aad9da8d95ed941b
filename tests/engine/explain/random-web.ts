import fc from 'fast-check';
import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';

const ohms = fc.constantFrom('1', '2', '3', '4', '6', '10', '12', '4.7', '0.5', '150');
/** What a branch holds besides a resistor: nothing, an ammeter, a cell with and without resistance inside, either way round, a constant current. */
const extra = fc.constantFrom('', '', '', 'A', 'B', 'b', 'r', 'I');
const edge = fc.tuple(fc.nat({ max: 3 }), fc.nat({ max: 3 }), ohms, extra);

/** A circuit of up to four nodes that one real cell drives, others in some branches: seldom series and parallel. */
export const web: fc.Arbitrary<Circuit> = fc
  .tuple(fc.array(edge, { minLength: 3, maxLength: 6 }), ohms)
  .map(([edges, inner]) => {
    const count = { R: 0, A: 0, B: 1, I: 0 };
    const driving = { id: 'B1', kind: 'supply', from: 'n0', to: 'n1', emf: '12', internalResistance: inner };
    const ring = [0, 1, 2, 3].map((n) => [n, (n + 1) % 4, '2', ''] as const);
    const components = [...ring, ...edges.filter(([a, b]) => a !== b)].flatMap(
      ([a, b, resistance, kind], k) => {
        const middle = kind ? `m${k}` : `n${b}`;
        const resistor = {
          id: `R${(count.R += 1)}`,
          kind: 'resistor',
          from: `n${a}`,
          to: middle,
          resistance,
        };
        if (!kind) return [resistor];
        if (kind === 'A')
          return [resistor, { id: `A${(count.A += 1)}`, kind: 'ammeter', from: middle, to: `n${b}` }];
        if (kind === 'I') {
          const source = { kind: 'source', from: middle, to: `n${b}`, current: '0.5' };
          return [resistor, { id: `I${(count.I += 1)}`, ...source }];
        }
        const [from, to] = kind === 'b' ? [`n${b}`, middle] : [middle, `n${b}`];
        const cell = { id: `B${(count.B += 1)}`, kind: 'supply', from, to, emf: '4.5' };
        return [resistor, { ...cell, ...(kind === 'r' && { internalResistance: '0.5' }) }];
      },
    );
    return circuitFrom({ version: 1, components: [driving, ...components] });
  });
