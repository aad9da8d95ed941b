import { isSwitch, type Component } from '../circuit/index.ts';
import type { Tree } from '../topology/index.ts';
import { parallel, total } from './arithmetic.ts';
import type { Term } from './rule-check.ts';

/** A part of a tree with its quantities, put as a pupil would, in quantities of components. Directions are the tree's. */
export interface Block {
  readonly tree: Tree;
  readonly parts: readonly Block[];
  /** The component, where it is a single one. */
  readonly component?: Component;
  /** `R1∥(R2+L1)`; first and last component, `R1…R9`, where there are more than five. */
  readonly label: string;
  readonly first: string;
  readonly last: string;
  readonly count: number;
  /** The ids of the supplies in it. */
  readonly supplies: readonly string[];
  /** What adds up to the current through it. */
  readonly current: readonly Term[];
  /** What adds up to the p.d. across it: nothing where it only joins. */
  readonly voltage: readonly Term[];
  /** Its resistance, as those of its components make it, supplies left out. */
  readonly resistance: Term;
}

/** Whether a p.d. is dropped in it. */
export const bears = ({ voltage }: Block): boolean => voltage.length > 0;

/** Whether it is a component with a current worth a name: no wire and no switch. */
export const carries = ({ component }: Block): boolean =>
  component !== undefined && component.kind !== 'wire' && !isSwitch(component);

/** The block with the lowest figure; the first of them. */
const least = (blocks: readonly Block[], figure: (block: Block) => number): Block | undefined =>
  blocks.toSorted((a, b) => figure(a) - figure(b))[0];

/** The branch that tells the p.d. of a parallel block best: the one with the fewest terms. */
export const plainest = (branches: readonly Block[]): Block | undefined =>
  least(branches, ({ voltage }) => voltage.length);

/** The part that tells the current of a series best: an ammeter, any other component, a block. */
export const telling = (parts: readonly Block[]): Block | undefined =>
  least(parts, (part) =>
    part.component?.kind === 'ammeter' ? 0 : carries(part) ? 1 : part.component ? 2 : 3,
  );

/** The block that parts make together. */
export function together(tree: Tree, parts: readonly Block[]): Block {
  const isSeries = tree.kind === 'series';
  const [first = '', last = ''] = [parts[0]?.first, parts.at(-1)?.last];
  const count = parts.reduce((sum, part) => sum + part.count, 0);
  const joined = (labels: readonly string[]): string =>
    count > 5 ? `${first}…${last}` : labels.join(isSeries ? '+' : '∥');
  const resistances = parts
    .filter((part) => !isSeries || (bears(part) && part.supplies.length === 0))
    .map(({ resistance }) => resistance);
  const [only, ...others] = resistances;
  return {
    tree,
    parts,
    label: joined(parts.map(({ label, component }) => (component ? label : `(${label})`))),
    first,
    last,
    count,
    supplies: parts.flatMap(({ supplies }) => supplies),
    current: isSeries ? (telling(parts)?.current ?? []) : parts.flatMap(({ current }) => current),
    voltage: isSeries ? parts.flatMap(({ voltage }) => voltage) : (plainest(parts)?.voltage ?? []),
    resistance:
      only && others.length === 0
        ? only
        : {
            name: `R_(${joined(resistances.map(({ name }) => name.slice(2)))})`,
            value: isSeries ? total(resistances) : parallel(resistances),
            ...(resistances.some(({ hidden }) => hidden) && { hidden: true }),
          },
  };
}
