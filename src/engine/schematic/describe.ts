import { formOf, type Circuit, type Component, type Range } from '../circuit/index.ts';
import { writeQuantity } from '../quantity/index.ts';
import { leaves, seriesParallel, type Single, type Tree } from '../topology/index.ts';
import { say, type Language } from '../words/index.ts';
import { ratingsOf } from './caption.ts';
import type { PartName, Phrase } from './codes.ts';

const names = { cell: 'cell', battery: 'battery', supply: 'd.c. supply' } as const;

function nameOf(component: Component): PartName {
  switch (component.kind) {
    case 'supply':
      if (component.range) return 'variable supply';
      return names[formOf(component)];
    case 'resistor':
      return component.range ? 'variable resistor' : 'resistor';
    case 'switch':
      return component.closed ? 'closed switch' : 'open switch';
    case 'push':
      return component.closed ? 'closed push switch' : 'open push switch';
    case 'lamp':
      return component.filament ? 'filament lamp' : 'lamp';
    case 'led':
      return 'light-emitting diode';
    case 'ldr':
      return 'light-dependent resistor';
    case 'fuse':
      return component.blown ? 'blown fuse' : 'fuse';
    case 'heater':
    case 'motor':
    case 'diode':
    case 'thermistor':
    case 'ammeter':
    case 'voltmeter':
    case 'wire':
      return component.kind;
  }
}

/** The two ends of a range as written; none where there is no range. */
const endsOf = (range: Range | undefined): string[] =>
  range ? [range.min, range.max].map((end) => writeQuantity(end).text) : [];

/** The diagram in words, from the supply round the loop, as a teacher reads it aloud; hidden values are left out. */
export function describeCircuit(circuit: Circuit, language?: Language): string {
  const components = new Map(circuit.components.map((component) => [component.id, component]));
  const tree = seriesParallel(circuit);

  const part = (component: Component, opposed = false): string => {
    const { id, hidden, condition } = component;
    const supply = component.kind === 'supply' && !hidden ? component : undefined;
    const range = component.kind === 'resistor' && !hidden ? component.range : supply?.range;
    const data = {
      name: nameOf(component),
      id,
      values: hidden ? [] : ratingsOf(component),
      internal: supply?.internalResistance ? writeQuantity(supply.internalResistance).text : '',
      range: endsOf(range),
      internalRange: endsOf(supply?.internalRange),
      opposed,
      condition,
    };
    return say({ code: 'part', data }, language);
  };

  const single = ({ id, reversed }: Single): string => {
    const component = components.get(id);
    return component ? part(component, component.kind === 'supply' && !reversed) : id;
  };

  const isMeter = (branch: Tree): boolean =>
    branch.kind === 'component' && components.get(branch.id)?.kind === 'voltmeter';

  /** `number` is that of the branch, so that branches within it are told apart. */
  const phrase = (branch: Tree, number: string): Phrase => {
    if (branch.kind === 'component') return { text: single(branch), join: [] };
    if (branch.kind === 'series') {
      const parts = branch.parts.map((each) => phrase(each, number));
      return { text: say({ code: 'chain', data: { parts } }, language), join: parts.at(-1)?.join ?? [] };
    }
    const others = branch.parts.filter((each) => !isMeter(each));
    const meters = others.length > 0 ? branch.parts.filter(isMeter).map((each) => phrase(each, '').text) : [];
    const [only] = others;
    if (only && others.length === 1) {
      const several = only.kind === 'component' ? [] : leaves(only).map(({ id }) => id);
      const { text, join } = phrase(only, number);
      return { text: say({ code: 'across', data: { text, meters, several } }, language), join };
    }
    const branches = (only ? others : branch.parts).map((each, i) => {
      const own = number === '' ? `${i + 1}` : `${number}.${i + 1}`;
      return { number: own, text: phrase(each, own).text };
    });
    return {
      text: say({ code: 'branches', data: { meters, branches } }, language),
      join: branches.map((each) => each.number),
    };
  };

  if (tree.kind === 'irreducible') {
    const parts = circuit.components.map((each) => ({ text: part(each), from: each.from, to: each.to }));
    return say({ code: 'web', data: { parts } }, language);
  }
  const [first, ...rest] = tree.kind === 'series' && tree.from === tree.to ? tree.parts : [];
  if (first?.kind !== 'component') return say({ code: 'network', data: phrase(tree, '') }, language);
  const parts = rest.map((each) => phrase(each, ''));
  return say({ code: 'loop', data: { supply: single(first), id: first.id, parts } }, language);
}
