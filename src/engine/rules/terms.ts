import type { Component } from '../circuit/index.ts';
import type { Readings } from '../solve/index.ts';
import { absolute, negate, zero } from './arithmetic.ts';
import type { Term, Value } from './rule-check.ts';

/** Whether it only joins its ends: a wire or a closed switch. */
export const isJoin = ({ kind }: Component): boolean => kind === 'wire' || kind === 'switch';

/** Whether it drops nothing: a wire, a closed switch or an ideal ammeter. */
export const isBare = (component: Component): boolean =>
  isJoin(component) || (component.kind === 'ammeter' && !component.resistance);

/** A term, hidden or not. */
export const term = (name: string, value: Value | undefined, hidden?: boolean): Term => ({
  name,
  value: value ?? zero,
  ...(hidden && { hidden }),
});

/** The same terms, each the other way round. */
export const flipped = (terms: readonly Term[]): readonly Term[] =>
  terms.map(({ value, ...rest }) => ({ ...rest, value: negate(value) }));

/** The same terms without their signs. */
export const magnitudes = (terms: readonly Term[]): readonly Term[] =>
  terms.map(({ value, ...rest }) => ({ ...rest, value: absolute(value) }));

/** The terms of single components, read off a solution. */
export class Terms {
  readonly #solution: Readings<Value>;

  constructor(solution: Readings<Value>) {
    this.#solution = solution;
  }

  /** The current along a step of a walk: what a supply delivers leaves it at `from`. */
  current({ kind, id }: Component, reversed: boolean): readonly Term[] {
    const terms = [this.#read(`I_${id}`)];
    return reversed === (kind === 'supply') ? terms : flipped(terms);
  }

  /** The p.d. that a step of a walk drops; nothing over what only joins. */
  voltage(component: Component, reversed: boolean): readonly Term[] {
    if (isBare(component)) return [];
    const isEmf = component.kind === 'supply' && !component.internalResistance;
    const terms = [this.#read(`V_${component.id}`, isEmf && component.hidden)];
    return reversed ? flipped(terms) : terms;
  }

  /** Its resistance. */
  resistance({ id, hidden }: Component): Term {
    return this.#read(`R_${id}`, hidden);
  }

  /** The power that a supply delivers, or anything else takes. */
  power({ id }: Component): Term {
    return this.#read(`P_${id}`);
  }

  #read(name: string, hidden?: boolean): Term {
    return term(name, this.#solution.quantity(name), hidden);
  }
}
