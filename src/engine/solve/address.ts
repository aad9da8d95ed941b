import type { Circuit, Component } from '../circuit/index.ts';
import type { Branch, Graph, Node } from './graph.ts';
import { isNamed, isTotal, lettersOf, type Letter, type Total } from './names.ts';

/** A component and, if it conducts, its branch. */
export interface Part {
  readonly component: Component;
  readonly branch: Branch | undefined;
}

/** What the name of a quantity means in a circuit: a letter of a component, a p.d. between two nodes, or a total. */
export type Address =
  | { readonly letter: Letter; readonly part: Part }
  | { readonly ends: readonly [Node, Node] }
  | { readonly total: Total };

/** The components by id. */
export function partsOf({ components }: Circuit, { branches }: Graph): ReadonlyMap<string, Part> {
  const parts = new Map<string, Part>();
  let place = 0;
  for (const component of components) {
    const branch = branches[place];
    const conducts = branch?.component === component;
    if (conducts) place++;
    parts.set(component.id, { component, branch: conducts ? branch : undefined });
  }
  return parts;
}

/** The two named junctions of `p_q`; an underline may be part of a name. */
function endsOf(text: string, byName: ReadonlyMap<string, Node>): readonly [Node, Node] | undefined {
  for (let cut = text.indexOf('_'); cut >= 0; cut = text.indexOf('_', cut + 1)) {
    const names = [text.slice(0, cut), text.slice(cut + 1)];
    const [p, q] = names.map((name) => (isNamed(name) ? byName.get(name) : undefined));
    if (p && q) return [p, q];
  }
  return undefined;
}

/** Reads the name of a quantity; undefined if the circuit has none such. */
export function addressOf(
  name: string,
  parts: ReadonlyMap<string, Part>,
  { byName }: Graph,
): Address | undefined {
  if (isTotal(name)) return { total: name };
  const cut = name.indexOf('_');
  const [before, after] = [name.slice(0, cut), name.slice(cut + 1)];
  const part = parts.get(after);
  const letter = part && lettersOf(part.component).find((own) => own === before);
  if (letter) return { letter, part };
  const ends = before === 'V' ? endsOf(after, byName) : undefined;
  return ends && { ends };
}
