import type { Component } from '../circuit/index.ts';
import { leaves } from '../topology/index.ts';
import type { Said } from '../words/index.ts';
import type { Block } from './block.ts';
import type { Equation } from './rule-check.ts';

/** A rule at one place: that it applies, with its equation, or that it does not. */
export interface Found {
  readonly about: readonly string[];
  readonly why: Said;
  readonly equation?: Equation;
}

/** The codes whose sentence names the blocks it is about. */
type Naming =
  | 'one path'
  | 'side by side'
  | 'one junction'
  | 'closed loop'
  | 'energy is kept'
  | 'resists'
  | 'current splits'
  | 'bypassed'
  | 'not resistance';

/** Components by their ids, each once; a wire across one counts as that one. */
export const componentsOf = (ids: readonly string[]): readonly string[] => [
  ...new Set(ids.map((id) => id.replace(/ bridge$/, ''))),
];

/** What is found about some blocks. */
export const found = (code: Naming, blocks: readonly Block[], equation?: Equation): Found => ({
  about: componentsOf(blocks.flatMap(({ tree }) => leaves(tree).map(({ id }) => id))),
  why: { code, data: { ids: blocks.map(({ label }) => label) } },
  ...(equation && { equation }),
});

/** That some components are taken out. */
export function takenOut(components: readonly Component[]): Found {
  const ids = components.map(({ id }) => id);
  return { about: ids, why: { code: 'taken out', data: { ids } } };
}

/** That supplies in some blocks forbid a rule of resistances. */
export const driven = (blocks: readonly Block[]): Found => ({
  ...found('one path', blocks),
  why: { code: 'supply inside', data: { ids: blocks.flatMap(({ supplies }) => supplies) } },
});
