import { resistanceOf, type Circuit } from '../circuit/index.ts';
import { leaves, seriesParallel, type Tree } from '../topology/index.ts';
import type { Because } from './codes.ts';

const idsOf = (tree: Tree): string[] => leaves(tree).map(({ id }) => id);
const holds = (tree: Tree, id: string): boolean => leaves(tree).some((leaf) => leaf.id === id);

/** The blocks that hold a component, from the whole down to itself. */
function pathTo(tree: Tree, id: string): Tree[] {
  if (tree.kind === 'component') return [tree];
  const part = tree.parts.find((each) => holds(each, id));
  return part ? [tree, ...pathTo(part, id)] : [tree];
}

/**
 * Why a quantity of a component rises or falls when a resistance rises, in a circuit that is series and parallel round one supply:
 * up from the resistance to the whole, then down from the supply's current. Where a rising block stands in series, the current falls,
 * and with it the p.d.s of the others, so its own p.d. rises; where it stands in parallel, the higher p.d. drives more through the
 * others, so less is left for it.
 */
export function reasonsFor(circuit: Circuit, quantity: string, what: string): Because[] {
  const tree = seriesParallel(circuit);
  const supplies = circuit.components.filter(({ kind }) => kind === 'supply');
  const [letter = '', target = ''] = quantity.split('_');
  const [supply] = supplies;
  const whole = tree.kind === 'series' && tree.from === tree.to && supplies.length === 1 && supply;
  if (!whole || !holds(tree, what) || what === supply.id) return [];
  const main = target === 'total' ? supply.id : target;
  if (!/^[IV]$/.test(letter) || !holds(tree, main)) return [];
  const inside = Number(resistanceOf(supply) ?? 0) > 0;
  const path = pathTo(tree, what);
  const because: Because[] = [{ code: 'this resistance rises', data: { id: what } }];
  for (const block of path.slice(1, -1).reverse())
    because.push({ code: 'so their resistance rises', data: { ids: idsOf(block) } });
  const current = (block: Tree | string, rises: boolean): Because => ({
    code: 'so the current',
    data: { ids: typeof block === 'string' ? [block] : idsOf(block), rises },
  });
  const across = (block: Tree, rises: boolean): Because => ({
    code: 'so the p.d.',
    data: { ids: idsOf(block), rises },
  });
  because.push(current(supply.id, false));

  /** Down a block that rises or falls as one: all in it does the same. */
  const follow = (block: Tree, rises: boolean): void => {
    for (const next of pathTo(block, main)) {
      const wanted = next.kind === 'component' ? letter : next.kind === 'parallel' ? 'V' : 'I';
      because.push(wanted === 'I' ? current(next, rises) : across(next, rises));
    }
  };

  for (const [depth, block] of path.entries()) {
    const rising = path[depth + 1];
    if (!rising || block.kind === 'component') break;
    const other = block.parts.find((part) => part !== rising && holds(part, main));
    if (block.kind === 'series') {
      if (other) {
        if (main !== supply.id) follow(other, false);
        else if (letter === 'V' && inside) because.push(across(other, true));
        return because;
      }
      because.push(across(rising, true));
    } else {
      if (other) {
        follow(other, true);
        return because;
      }
      because.push(current(rising, false));
    }
  }
  const told = because.at(-1)?.code;
  const own = path.at(-1);
  if (letter === 'I' && told !== 'so the current') because.push(current(main, false));
  if (letter === 'V' && told !== 'so the p.d.' && own) because.push(across(own, true));
  return because;
}
