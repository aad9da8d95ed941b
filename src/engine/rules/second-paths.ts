import { asMarked, isSwitch, withValue, type Circuit } from '../circuit/index.ts';
import { electrical } from '../topology/index.ts';

/** The open switches each of which leads a second path past or through something, once it is closed: as the circuit is drawn, so that nothing secret is told. */
export function secondPaths(circuit: Circuit): string[] {
  const drawn = asMarked(circuit);
  const { live, trees } = electrical(drawn);
  return drawn.components.flatMap((each) => {
    if (!isSwitch(each) || each.closed || each.condition) return [];
    const closed = electrical(withValue(drawn, each.id, 'closed'));
    return closed.live.length > live.length && closed.trees.length === trees.length ? [each.id] : [];
  });
}
