import type { Circuit, Component } from '../circuit/index.ts';
import type { Readings } from '../solve/index.ts';
import { electrical, looksOn } from '../topology/index.ts';
import { multiply, total } from './arithmetic.ts';
import { blocksOf, type Block } from './block.ts';
import { spread } from './check.ts';
import type { Term, Value } from './rule-check.ts';
import { Terms } from './terms.ts';

/** A circuit looked over: all that the rules go by. */
export class Survey {
  readonly solution: Readings<Value>;
  readonly terms: Terms;
  /** The components that a current can flow in. */
  readonly live: readonly Component[];
  readonly components: ReadonlyMap<string, Component>;
  /** The supplies among them. */
  readonly supplies: readonly Component[];
  readonly bridge: readonly string[];
  /** Ideal voltmeters. */
  readonly lookingOn: readonly Component[];
  /** All blocks, each before its parts; those in series, and those in parallel. */
  readonly blocks: readonly Block[];
  readonly chains: readonly Block[];
  readonly groups: readonly Block[];
  /** The block that a block is a part of. */
  readonly around: ReadonlyMap<Block, Block>;

  constructor(circuit: Circuit, solution: Readings<Value>) {
    const { live, trees, bridge } = electrical(circuit);
    this.solution = solution;
    this.terms = new Terms(solution);
    this.live = live;
    this.supplies = live.filter(({ kind }) => kind === 'supply');
    this.bridge = bridge;
    this.components = new Map(live.map((component) => [component.id, component]));
    const { blocks, around } = blocksOf(trees, this.components, this.terms);
    this.lookingOn = circuit.components.filter(looksOn);
    this.blocks = blocks;
    this.chains = blocks.filter(({ tree }) => tree.kind === 'series');
    this.groups = blocks.filter(({ tree }) => tree.kind === 'parallel');
    this.around = around;
  }

  /** The largest value that a quantity of a letter has in the circuit; 1 where all are 0. */
  largest(letter: 'I' | 'V' | 'P'): number {
    const values = this.live.map(({ id }) =>
      Math.abs(Number(this.solution.quantity(`${letter}_${id}`) ?? 0)),
    );
    const most = values.reduce((a, b) => Math.max(a, b), 0);
    return most > 0 ? most : 1;
  }

  /** The supply that a block lies straight across, alone but for what drops nothing, if it does. */
  across(block: Block): Block | undefined {
    const chain = this.around.get(block);
    if (!chain || !isClosed(chain)) return undefined;
    const [supply, ...rest] = chain.parts;
    return rest.every((part) => part === block || part.voltage.length === 0) ? supply : undefined;
  }

  /** `R_total`, where a block is all that is outside the one supply, or between the terminals. */
  totalName(block: Block): string | undefined {
    const isPassive = this.supplies.length === 0 && !this.around.has(block);
    const isAll = isPassive || isClosed(block) || this.across(block) !== undefined;
    const isDefined = this.bridge.length === 0 && this.solution.totalResistance() !== undefined;
    return isAll && isDefined ? 'R_total' : undefined;
  }

  /** How far the p.d. across a block differs from its current times its resistance, or its resistance from the total one. */
  measured({ name, value }: Term, voltage: readonly Term[], current: readonly Term[]): number {
    if (this.supplies.length > 0)
      return spread([total(voltage), multiply(total(current), value)], this.largest('V'));
    const whole = name === 'R_total' ? this.solution.totalResistance() : undefined;
    return spread([value, whole ?? value], Number(value));
  }
}

/** Whether a block closes on itself through its first part, a supply. */
export const isClosed = ({ tree }: Block): boolean => tree.kind === 'series' && tree.from === tree.to;
