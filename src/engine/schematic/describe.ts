import { formOf, isPoint, isSupply, type Circuit, type Component, type Range } from '../circuit/index.ts';
import { writeQuantity } from '../quantity/index.ts';
import { leaves, pieces, turnedRound, type Piece, type Single, type Tree } from '../topology/index.ts';
import { say, type Language } from '../words/index.ts';
import { bridgeOf, type Bridge } from './bridge.ts';
import { ratingsOf } from './caption.ts';
import type { DescriptionData, PartName, Phrase } from './codes.ts';

const names = { cell: 'cell', battery: 'battery', supply: 'd.c. supply' } as const;

function nameOf(component: Component): PartName {
  switch (component.kind) {
    case 'supply':
      if (component.range) return 'variable supply';
      return names[formOf(component)];
    case 'source':
      return component.range ? 'variable constant-current supply' : 'constant-current supply';
    case 'resistor':
      return component.range ? 'variable resistor' : 'resistor';
    case 'potentiometer':
      return 'potentiometer part';
    case 'switch':
      return component.closed ? 'closed switch' : 'open switch';
    case 'push':
      return component.closed ? 'closed push switch' : 'open push switch';
    case 'changeover':
      return component.closed ? 'closed changeover contact' : 'open changeover contact';
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

/** The diagram in words, from the supply round the loop, as a teacher reads it aloud, and where the 0 V mark is; hidden values are left out. */
export function describeCircuit(circuit: Circuit, language?: Language): string {
  const components = new Map(circuit.components.map((component) => [component.id, component]));
  const isOnlySupply = circuit.components.filter(isSupply).length === 1;
  const part = (component: Component, way: DescriptionData['part']['way']): string => {
    const { id, hidden, condition } = component;
    const supply = component.kind === 'supply' && !hidden ? component : undefined;
    const range = 'range' in component && !hidden ? component.range : undefined;
    const data = {
      name: nameOf(component),
      id,
      values: hidden ? [] : ratingsOf(component),
      internal: supply?.internalResistance ? writeQuantity(supply.internalResistance).text : '',
      range: endsOf(range),
      internalRange: endsOf(supply?.internalRange),
      way,
      condition,
    };
    return say({ code: 'part', data }, language);
  };

  const single = ({ id, reversed }: Single, isApart = false): string => {
    const component = components.get(id);
    if (!component) return id;
    if (component.kind === 'diode' || component.kind === 'led')
      return part(component, reversed ? 'turned round' : '');
    if (!isSupply(component) || isOnlySupply) return part(component, '');
    if (isApart) return part(component, reversed ? 'positive last' : 'positive first');
    return part(component, reversed ? '' : 'turned round');
  };

  const isMeter = (branch: Tree): boolean =>
    branch.kind === 'component' && components.get(branch.id)?.kind === 'voltmeter';

  /** `number` is that of the branch, so that branches within it are told apart; `isApart` where the way round the first supply need not lead through it. */
  const phrase = (branch: Tree, number: string, isApart = number !== ''): Phrase => {
    if (branch.kind === 'component') return { text: single(branch, isApart), join: [] };
    if (branch.kind === 'series') {
      const parts = branch.parts.map((each) => phrase(each, number, isApart));
      return { text: say({ code: 'chain', data: { parts } }, language), join: parts.at(-1)?.join ?? [] };
    }
    const others = branch.parts.filter((each) => !isMeter(each));
    const meters = others.length > 0 ? branch.parts.filter(isMeter).map((each) => phrase(each, '').text) : [];
    const [only] = others;
    if (only && others.length === 1) {
      const several = only.kind === 'component' ? [] : leaves(only).map(({ id }) => id);
      const { text, join } = phrase(only, number, isApart);
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

  /** Parts that make a loop with a supply, which is the one at `place` of what closes it. */
  const loop = (closing: readonly Tree[], between: readonly Phrase[]): string | undefined => {
    const place = closing.findIndex((each) => {
      const component = each.kind === 'component' ? components.get(each.id) : undefined;
      return component !== undefined && isSupply(component);
    });
    const supply = closing[place];
    if (supply?.kind !== 'component') return undefined;
    const told = (trees: readonly Tree[]): Phrase[] => trees.map((each) => phrase(each, ''));
    const parts = [...told(closing.slice(place + 1)), ...between, ...told(closing.slice(0, place))];
    return say({ code: 'loop', data: { supply: single(supply), id: supply.id, parts } }, language);
  };

  const bridge = ({ closing, branches, across }: Bridge): string | undefined => {
    const joined: Phrase = {
      text: say(
        {
          code: 'joined branches',
          data: {
            across: phrase(across, '', true).text,
            branches: branches.map((pair, i) => {
              const parts = pair.map((each) => phrase(each, `${i + 1}`));
              return { number: `${i + 1}`, text: say({ code: 'chain', data: { parts } }, language) };
            }),
          },
        },
        language,
      ),
      join: ['1', '2'],
    };
    if (closing.kind === 'component' && closing.id === '')
      return say({ code: 'network', data: joined }, language);
    return loop(closing.kind === 'series' ? closing.parts : [closing], [joined]);
  };

  const web = ({ parts }: Piece): string => {
    const nodes = new Map<string, { number: number; ends: number }>();
    for (const node of parts.flatMap(({ from, to }) => [from, to])) {
      const { number, ends } = nodes.get(node) ?? { number: nodes.size + 1, ends: 0 };
      nodes.set(node, { number, ends: ends + 1 });
    }
    const told = parts.map((each, place) => {
      const part = place === 0 ? turnedRound(each) : each;
      const [from, to] = [part.from, part.to].map((node) => nodes.get(node));
      const outside = part.kind === 'component' && part.id === '';
      return {
        text: outside ? '' : phrase(part, '', true).text,
        from: from?.number ?? 0,
        to: to?.number ?? 0,
        back: part.to.startsWith(`${part.from}\n`),
      };
    });
    return say({ code: 'web', data: { parts: told } }, language);
  };

  const told = (tree: Tree): string => {
    const loose = tree.kind === 'series' && tree.from === tree.to ? loop(tree.parts, []) : undefined;
    return loose ?? say({ code: 'network', data: phrase(tree, '') }, language);
  };

  const texts = pieces(circuit).map((piece) => {
    const found = bridgeOf(piece);
    return piece.tree ? told(piece.tree) : ((found && bridge(found)) ?? web(piece));
  });
  const meeting = (node: string): string[] =>
    circuit.components.filter(({ from, to }) => from === node || to === node).map(({ id }) => id);
  const points = [...new Set(circuit.components.flatMap(({ from, to }) => [from, to]))]
    .filter(isPoint)
    .map((name) => ({ name, ids: meeting(name) }));
  const { zero } = circuit;
  const ids = zero === undefined ? [] : meeting(zero);
  return [
    say({ code: 'pieces', data: { texts } }, language),
    ...(points.length > 0 ? [say({ code: 'points', data: { points } }, language)] : []),
    ...(ids.length > 0 ? [say({ code: 'zero mark', data: { ids } }, language)] : []),
  ].join(' ');
}
