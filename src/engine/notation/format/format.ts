import { isPoint, isSupply, type Circuit, type Component } from '../../circuit/index.ts';
import type { Quantity } from '../../quantity/index.ts';
import { leaves, type Single, type Tree } from '../../topology/index.ts';
import { componentText } from './component-text.ts';
import { plan, type Plan } from './leave-out.ts';
import { quantityText } from '../quantity-text.ts';

/** Brackets inside one another, at most; the parser reads 64. */
const depthLimit = 63;

/** Names for nodes: their own where it can be a junction's, else a, b, c, … */
function junctionNames(nodes: Iterable<string>): ReadonlyMap<string, string> {
  const all = [...new Set(nodes)];
  const isName = (node: string): boolean => /^[A-Za-z][A-Za-z\d]*$/.test(node);
  const taken = new Set(all.filter(isName));
  let next = 0;
  const fresh = (): string => {
    for (;;) {
      const name = String.fromCharCode(97 + (next % 26)) + (next < 26 ? '' : `${Math.floor(next / 26)}`);
      next += 1;
      if (!taken.has(name)) return name;
    }
  };
  return new Map(all.map((node) => [node, isName(node) ? node : fresh()]));
}

/** A component between two junctions, in the direction of the line: a supply drives along it. */
function placedText(component: Component, names: ReadonlyMap<string, string>): string {
  const { from, to } = component;
  const [left, right] = isSupply(component) ? [to, from] : [from, to];
  return `${componentText(component, false)} @${names.get(left) ?? ''}–@${names.get(right) ?? ''}`;
}

/** The 0 V mark at its junction, if there is one. */
const zeroText = (zero: string | undefined, names: ReadonlyMap<string, string>): readonly string[] =>
  zero === undefined ? [] : [`0 V @${names.get(zero) ?? ''}`];

/** Every component placed between junctions: any circuit can be written so. */
function allPlaced({ components, terminals, zero }: Circuit): string {
  const names = junctionNames(components.flatMap(({ from, to }) => [from, to]));
  const ends = terminals?.map((node) => `@${names.get(node) ?? ''}`).join('–');
  const texts = components.map((each) => placedText(each, names));
  return [...texts, ...zeroText(zero, names), ...(ends ? [`ends ${ends}`] : [])].join('; ');
}

/** The one component that a voltmeter is straight across, if there is one; a supply only where it is alone there. */
function straightAcross(meter: Component, chained: readonly Component[]): Component | undefined {
  if (meter.kind !== 'voltmeter') return undefined;
  const ends = [meter.from, meter.to];
  const beside = chained.filter(({ from, to }) => from !== to && ends.includes(from) && ends.includes(to));
  const loads = beside.filter((each) => !isSupply(each));
  const [first, second] = loads.length > 0 ? loads : beside;
  return meter.from === meter.to || second ? undefined : first;
}

/** Whether a tree needs more brackets inside one another than the parser reads. */
function tooDeep(tree: Tree, levels = depthLimit): boolean {
  return tree.kind !== 'component' && (levels === 0 || tree.parts.some((part) => tooDeep(part, levels - 1)));
}

/** A chain with its brackets; junctions by name. */
function chainText(
  tree: Tree,
  leafText: (leaf: Single) => string,
  names: ReadonlyMap<string, string>,
): string {
  const named = (node: string): readonly string[] => {
    const name = names.get(node);
    return name === undefined ? [] : [`@${name}`];
  };
  const text = (part: Tree): string => (part.kind === 'component' ? leafText(part) : `(${inside(part)})`);
  const inside = (tree: Tree): string => {
    if (tree.kind === 'component') return leafText(tree);
    if (tree.kind === 'parallel') return tree.parts.map(text).join(' ∥ ');
    return tree.parts
      .flatMap((part, index) => [...(index > 0 ? named(part.from) : []), text(part)])
      .join(' + ');
  };
  const { from, to } = tree;
  const [start, end] = [from === to ? [] : named(from), named(to)];
  const bracketed = tree.kind === 'parallel' && start.length + end.length > 0;
  return [...start, bracketed ? text(tree) : inside(tree), ...end].join(' + ');
}

function planText({ components, zero }: Circuit, { tree, placed }: Plan): string | undefined {
  const byId = new Map(components.map((component) => [component.id, component]));
  const leafOf = new Map(leaves(tree).map((leaf) => [leaf.id, leaf]));
  const chained = components.filter(({ id }) => leafOf.has(id));
  const across = new Map(placed.map((component) => [component, straightAcross(component, chained)]));
  const between = placed.filter((component) => !across.get(component));
  const nodesOf = (list: readonly Component[]): string[] => list.flatMap(({ from, to }) => [from, to]);
  const marked = zero === undefined ? [] : [zero];
  const names = junctionNames([...nodesOf(between), ...nodesOf(chained).filter(isPoint), ...marked]);
  // A supply alone stays open only as long as nothing is added to it.
  const only = tree.kind === 'component' ? byId.get(tree.id) : undefined;
  if (only && isSupply(only) && names.size > 0) return undefined;
  const leafText = ({ id, reversed }: Single): string => {
    const component = byId.get(id);
    return component ? componentText(component, reversed !== isSupply(component)) : '';
  };
  const beside = placed.map((component) => {
    const other = across.get(component);
    if (!other) return placedText(component, names);
    // Across a supply the line runs from its positive terminal to its negative one.
    const left = isSupply(other) ? other.from : leafOf.get(other.id)?.from;
    return `${componentText(component, component.from !== left)} across ${other.id}`;
  });
  return [chainText(tree, leafText, names), ...beside, ...zeroText(zero, names)].join('; ');
}

/**
 * Writes a circuit as a line of notation, in one canonical form: the first supply first, then round the circuit; parallel
 * groups in brackets; voltmeters and what is neither in series nor in parallel behind semicolons. `parseCircuit` reads it back
 * as an equal circuit (names of nodes apart) up to its limits.
 */
export function formatCircuit(circuit: Circuit): string {
  const found = plan(circuit);
  const text = found && !tooDeep(found.tree) ? planText(circuit, found) : undefined;
  const where = Object.values<Quantity>({ ...circuit.surroundings }).map(
    (felt) => `; at ${quantityText(felt)}`,
  );
  return [text ?? allPlaced(circuit), ...where].join('');
}
