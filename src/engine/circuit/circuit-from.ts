import { say } from '../words/index.ts';
import { componentFrom, node } from './component-from.ts';
import { refuse, refuseType, shown } from './fields.ts';
import { CircuitFormatError } from './format-error.ts';
import { isSupply } from './is-supply.ts';
import { object, refuseJson } from './json-fields.ts';
import type { Circuit, Component } from './model.ts';
import { surroundingsFrom } from './surroundings.ts';
import { matched, wrongTwins } from './twins.ts';

/** The most components that the JSON form may hold. */
export const componentLimit = 200_000;

/** Reads the two terminals of a network without a supply; a circuit with a supply has none. */
function terminalsOf(
  found: unknown,
  components: readonly Component[],
): readonly [string, string] | undefined {
  const supplied = components.some(isSupply);
  if (found === undefined && supplied) return undefined;
  if (found === undefined) refuseJson('', 'terminals missing', {});
  if (supplied) refuse('terminals', 'terminals with a supply', {});
  const list: readonly unknown[] = Array.isArray(found) ? found : [];
  if (list.length !== 2) {
    refuseType('terminals', 'a list of two nodes', found);
  }
  const [first, second] = [node(list[0], 'terminals[0]'), node(list[1], 'terminals[1]')];
  for (const terminal of [first, second]) {
    if (!components.some(({ from, to }) => from === terminal || to === terminal)) {
      refuseJson('terminals', 'terminal unknown', { found: terminal });
    }
  }
  return [first, second];
}

/** Reads the node of the 0 V mark, which must be one of the circuit's. */
function zeroOf(found: unknown, components: readonly Component[]): string | undefined {
  if (found === undefined) return undefined;
  const zero = node(found, 'zero');
  if (components.some(({ from, to }) => from === zero || to === zero)) return zero;
  refuseJson('zero', 'zero unknown', { found: zero });
}

/**
 * Reads a circuit from untrusted JSON: `{"version": 1, "components": […], "terminals": […]}`, values as numbers or exact texts
 * ("4.7", "1/3") in SI units. Throws CircuitFormatError with the path of what is wrong.
 */
export function circuitFrom(json: unknown): Circuit {
  const fields = object(json, '', ['version', 'components', 'terminals', 'zero', 'surroundings']);
  const version = fields['version'];
  if (version === undefined) refuseJson('', 'missing field', { field: 'version' });
  if (version !== 1) refuseJson('version', 'unknown version', { found: shown(version) });
  const list: unknown = fields['components'];
  if (!Array.isArray(list)) {
    refuseType('components', 'a list of components', list);
  }
  if (list.length > componentLimit) {
    refuse('components', 'too many components', { count: list.length, limit: componentLimit });
  }
  const labels = new Set<string>();
  const read = list.map((item: unknown, index) => {
    const path = `components[${index}]`;
    const component = componentFrom(item, path);
    if (labels.has(component.id)) refuse(`${path}.id`, 'label used twice', { id: component.id });
    labels.add(component.id);
    return component;
  });
  for (const { id, wrong } of wrongTwins(read)) {
    const index = read.findIndex((each) => each.id === id);
    throw new CircuitFormatError(`components[${index}]`, wrong, say(wrong));
  }
  const components = matched(read);
  const terminals = terminalsOf(fields['terminals'], components);
  const zero = zeroOf(fields['zero'], components);
  const surroundings = surroundingsFrom(fields['surroundings']);
  return {
    components,
    ...(terminals && { terminals }),
    ...(zero !== undefined && { zero }),
    ...(surroundings && { surroundings }),
  };
}
