import { CircuitFormatError, exactText, nearest, say } from '../../engine/core.ts';
import type { Settings } from '../link/index.ts';
import type { Felt } from './felt.ts';

/** What surrounds a circuit in one text: "temperature 5 light 200". */
export function textOf({ quantities }: Felt): string {
  return quantities.map(([name, { value }]) => `${name} ${exactText(value)}`).join(' ');
}

/** Such a text as settings by their names. Throws CircuitFormatError where a word of it names nothing that is felt. */
export function settingsOf({ quantities }: Felt, text: string): Settings {
  const names: readonly string[] = quantities.map(([name]) => name);
  const pairs = text.match(/\S+\s*\S*/g) ?? [];
  return Object.fromEntries(
    pairs.map((pair) => {
      const [name = '', value = ''] = pair.split(/\s+/);
      if (names.includes(name)) return [name, value];
      const data = { id: 'the surroundings', found: name.slice(0, 40), suggestion: nearest(name, names) };
      const said = { code: 'not a setting', data } as const;
      throw new CircuitFormatError('surroundings', said, say(said));
    }),
  );
}
