import {
  bridges,
  isResistor,
  isSupply,
  resistanceOf,
  type Circuit,
  type Component,
} from '../circuit/index.ts';
import type { Readings } from '../solve/index.ts';
import { electrical, looksOn, type Single, type Tree } from '../topology/index.ts';
import { add, negate, zero } from './arithmetic.ts';
import { bears, together, type Block } from './block.ts';
import { flipped, valueOf } from './equation.ts';
import type { Equation, Term, Value } from './rule-check.ts';
import { secondPaths } from './second-paths.ts';

/** Whether a block closes on itself through its first part, a supply. */
export const isClosed = ({ tree }: Block): boolean => tree.kind === 'series' && tree.from === tree.to;

/** Whether a component only joins its ends, so that its p.d. is not worth a name. */
export const isJoin = (component: Component): boolean =>
  !isSupply(component) && !isResistor(component) && Number(resistanceOf(component)) === 0;

/** A circuit looked over: all that the rules go by. */
export class Survey {
  readonly solution: Readings<Value>;
  /** The components that a current can flow in. */
  readonly live: readonly Component[];
  /** The supplies among them. */
  readonly supplies: readonly Component[];
  /** Those in bridges. */
  readonly bridge: readonly string[];
  /** Ideal voltmeters. */
  readonly watching: readonly Component[];
  /** What is taken out. */
  readonly broken: readonly Component[];
  /** All blocks, each before its parts. */
  readonly blocks: readonly Block[];
  /** The block that a block is a part of. */
  readonly around: ReadonlyMap<Block, Block>;
  readonly #circuit: Circuit;
  readonly #components: ReadonlyMap<string, Component>;
  #secondPaths: readonly string[] | undefined;

  constructor(circuit: Circuit, solution: Readings<Value>) {
    this.#circuit = circuit;
    const { live, trees, bridge } = electrical(circuit);
    this.solution = solution;
    this.live = live;
    this.supplies = live.filter(isSupply);
    this.bridge = bridge;
    const { components } = bridges(circuit);
    this.broken = components.filter(({ condition }) => condition === 'broken');
    this.watching = components.filter((component) => looksOn(component) && !this.broken.includes(component));
    this.#components = new Map(components.map((component) => [component.id, component]));

    const order: Tree[] = [];
    const pending = trees.toReversed();
    for (let tree = pending.pop(); tree; tree = pending.pop()) {
      order.push(tree);
      if (tree.kind !== 'component') for (const part of tree.parts.toReversed()) pending.push(part);
    }
    // From the leaves up, without recursion, so that any depth will do.
    const built = new Map<Tree, Block>();
    const around = new Map<Block, Block>();
    for (const tree of order.toReversed()) {
      const block =
        tree.kind === 'component'
          ? this.step(tree)
          : together(
              tree,
              tree.parts.flatMap((part) => built.get(part) ?? []),
            );
      for (const part of block.parts) around.set(part, block);
      built.set(tree, block);
    }
    this.blocks = order.flatMap((tree) => built.get(tree) ?? []);
    this.around = around;
  }

  /** The open switches each of which would lead a second path: looked for once for all rules that ask. */
  get secondPaths(): readonly string[] {
    return (this.#secondPaths ??= secondPaths(this.#circuit));
  }

  /** A step of a walk through one component. What a supply delivers leaves it at `from`. */
  step(tree: Single): Block {
    const { id, reversed, from, to } = tree;
    const component = this.#components.get(id) ?? { kind: 'wire', id, from, to };
    const drives = isSupply(component);
    const turned = (terms: readonly Term[], isTurned: boolean): readonly Term[] =>
      isTurned ? flipped(terms) : terms;
    const isEmf = component.kind === 'supply' && !component.internalResistance;
    const isGiven = component.kind === 'source';
    return {
      tree,
      parts: [],
      component,
      label: id,
      first: id,
      last: id,
      count: 1,
      supplies: drives ? [id] : [],
      current: turned([this.read('I', component, isGiven)], reversed !== drives),
      voltage: isJoin(component) ? [] : turned([this.read('V', component, isEmf)], reversed),
      resistance: this.read('R', component, true),
    };
  }

  /** A quantity of a component, which its being hidden hides where it is its own value. */
  read(letter: 'I' | 'V' | 'R' | 'P', { id, hidden }: Component, isOwn = false): Term {
    const name = `${letter}_${id}`;
    return { name, value: this.solution.quantity(name) ?? zero, ...(isOwn && hidden && { hidden }) };
  }

  /** The supply that a block lies straight across, alone but for what only joins, if it does. */
  across(block: Block): Block | undefined {
    const chain = this.around.get(block);
    if (!chain || !isClosed(chain)) return undefined;
    const [supply, ...rest] = chain.parts;
    return rest.every((part) => part === block || !bears(part)) ? supply : undefined;
  }

  /** The resistance of a block: `R_total`, where that is all outside the one supply or between the terminals. */
  resistance(block: Block): Term {
    const isPassive = this.supplies.length === 0 && !this.around.has(block);
    const value = this.solution.totalResistance();
    const isTotal = isPassive || isClosed(block) || this.across(block);
    if (!isTotal || this.bridge.length > 0 || value === undefined) return block.resistance;
    return { ...block.resistance, name: 'R_total', value };
  }

  /** How far the sides of an equation differ, relative to the largest quantity of its kind in the circuit. */
  spread({ form, relation, sides }: Equation): number {
    const [first = zero, ...others] = sides.map((side) => valueOf(form, side));
    const letter = sides[0]?.[0]?.name.charAt(0) as 'I' | 'V' | 'P' | 'R';
    const all = letter === 'R' ? [first] : this.live.map((component) => this.read(letter, component).value);
    const scale = Math.max(...all.map((value) => Math.abs(Number(value))));
    const away = others.map((value) => Math.abs(Number(add(value, negate(first)))));
    return relation === 'less' || scale === 0 ? 0 : Math.max(...away) / scale;
  }
}
