import { isSupply, type Circuit } from '../circuit/index.ts';
import { blocks } from './blocks.ts';
import { incidence, type Edge } from './edge.ts';
import { looksOn } from './junctions.ts';
import type { Single } from './tree.ts';

/** A closed walk through components, each left where the next is entered. */
export type Loop = readonly Single[];

function step(edge: Edge, from: string): Single {
  const reversed = edge.from !== from;
  return { kind: 'component', id: edge.id, reversed, from, to: reversed ? edge.from : edge.to };
}

const back = ({ kind, id, reversed, from, to }: Single): Single => ({
  kind,
  id,
  reversed: !reversed,
  from: to,
  to: from,
});

/** The steps that lead away from a node, to where there is none. */
function walk(steps: ReadonlyMap<string, Single>, node: string, side: 'from' | 'to'): Single[] {
  const way: Single[] = [];
  for (let next = steps.get(node); next; next = steps.get(next[side])) way.push(next);
  return way;
}

/**
 * Independent loops of a block, all through its edge `cut`. One ear after another is laid on, the shortest at each node
 * first (H. Whitney, Transactions of the AMS 34 (1932) 339–362, from memory). The nodes stay in an order in which every ear
 * runs down, so that a loop can go down to an ear, along it, and on down without meeting itself.
 */
function loopsThrough(cut: Edge, block: readonly Edge[]): readonly Loop[] {
  const at = incidence(block);
  let order: readonly string[] = [cut.from, cut.to];
  const placed = new Set(order);
  const used = new Set<string>([cut.id]);
  const down = new Map<string, Single>();
  const up = new Map<string, Single>();

  /** The shortest way over unused edges and new nodes from a placed node to another one. */
  const ear = (from: string): readonly Single[] => {
    const came = new Map<string, Single>();
    const reached = [from];
    for (const node of reached) {
      for (const edge of at.get(node) ?? []) {
        const next = step(edge, node);
        if (used.has(edge.id) || next.to === from || came.has(next.to)) continue;
        came.set(next.to, next);
        if (placed.has(next.to)) return walk(came, next.to, 'from').reverse();
        reached.push(next.to);
      }
    }
    return [];
  };

  const found: Loop[] = [];
  for (const node of placed) {
    for (let way = ear(node); way.length > 0; way = ear(node)) {
      const other = way.at(-1)?.to ?? node;
      const against = order.indexOf(node) > order.indexOf(other);
      const steps = against ? way.map(back).reverse() : way;
      const [top, bottom] = against ? [other, node] : [node, other];
      steps.slice(1).forEach((next, index) => {
        placed.add(next.from);
        up.set(next.from, steps[index] ?? next);
        down.set(next.from, next);
      });
      const cutAt = order.indexOf(top) + 1;
      order = [...order.slice(0, cutAt), ...steps.slice(1).map(({ from }) => from), ...order.slice(cutAt)];
      for (const { id } of steps) used.add(id);
      found.push([
        step(cut, cut.to),
        ...walk(up, top, 'from').reverse(),
        ...steps,
        ...walk(down, bottom, 'to'),
      ]);
    }
  }
  return found;
}

/**
 * Independent loops that show the loop law, as many as there are: through a supply wherever that is possible, running the
 * way it drives, the shortest first. Ideal voltmeters are left out. Meant for circuits of classroom size: the loops alone
 * can hold the square of the number of components.
 */
export function loops({ components }: Circuit): readonly Loop[] {
  const supplies = new Set<Edge>(components.filter(isSupply));
  return blocks<Edge>(components.filter((component) => !looksOn(component)))
    .flatMap(({ edges }) => {
      const cut = edges.find((edge) => supplies.has(edge)) ?? edges[0];
      return cut ? loopsThrough(cut, edges) : [];
    })
    .sort((a, b) => a.length - b.length);
}
