import { blockOf, ribbonRoom, type Block, type Measure } from '../block.ts';
import type { Share } from '../drawing.ts';
import { margin } from '../plan.ts';
import type { Edge } from './graph.ts';
import type { Web } from './web.ts';

/** What is drawn of one edge. */
export interface Stretch {
  /** Undefined for a wire. */
  readonly block: Block | undefined;
  /** The nodes of the wires at its two ends. */
  readonly from: string;
  readonly to: string;
  readonly carries: readonly Share[];
  readonly part: number;
  /** Whether its labels stand at its left. */
  readonly left: boolean;
  /** How far its block stays from either end. */
  readonly clear: number;
}

/** The room that an edge takes along its line and to either side. */
export interface Room {
  readonly length: number;
  readonly before: number;
  readonly after: number;
}

/** What a block with arrows of currents stays away from crossings: a wire across a component nears no hop. */
const hopRoom = 8;

const hasLead = ({ lead, parts }: Block): boolean => lead !== undefined || parts.some(hasLead);

/** The edges of each strand in the order in which it runs through them. */
function inOrder(edges: readonly Edge[], strand: number): number[] {
  const own = edges.flatMap(({ part }, edge) => (part === strand ? [edge] : []));
  const first = own.find((edge) => own.every((each) => edges[each]?.to !== edges[edge]?.from)) ?? own[0];
  const way: number[] = [];
  for (let next = first; next !== undefined && !way.includes(next);) {
    way.push(next);
    const end = edges[next]?.to;
    next = own.find((edge) => edges[edge]?.from === end);
  }
  return way;
}

/** What is drawn of each edge; undefined where nothing is. The symbols of a strand stand where it falls most. */
export function stretchesOf(
  { strands, embedding: { edges }, heights }: Web,
  measureOf: (edge: number) => Measure,
): (Stretch | undefined)[] {
  const drop = (edge: number): number => {
    const { from = -1, to = -1 } = edges[edge] ?? {};
    return Math.abs((heights[from] ?? 0) - (heights[to] ?? 0));
  };
  const found = edges.map((): Stretch | undefined => undefined);
  strands.forEach(({ kind, tree }, strand) => {
    if (kind === 'outside') return;
    const way = inOrder(edges, strand);
    const place = way.reduce((best, edge) => (drop(edge) > drop(best) ? edge : best), way[0] ?? -1);
    const measure = measureOf(place);
    const block = blockOf(tree, measure);
    const { from, to } = tree;
    way.forEach((edge, i) => {
      const passed = i > way.indexOf(place);
      const own = edge === place && kind === 'part';
      found[edge] = {
        block: own ? block : undefined,
        from: passed ? to : from,
        to: passed || own ? to : from,
        carries: block.carries,
        part: strand,
        left: measure.left,
        clear: way.length > 1 && hasLead(block) ? hopRoom : 0,
      };
    });
  });
  return found;
}

/** The least length of a wire between two rails. */
const least = 28;

/** What a column whose labels stand at its left has besides at its right, where wires across it and across the next column face each other. */
const facing = 8;

/** The room of an edge. */
export function roomOf(stretch: Stretch | undefined): Room {
  if (stretch?.block) {
    const { length, before, after } = stretch.block;
    return { length: length + 2 * stretch.clear, before, after: stretch.left ? after + facing : after };
  }
  const side = stretch ? ribbonRoom + 2 : margin;
  return { length: least, before: side, after: side };
}
