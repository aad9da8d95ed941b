import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';

/** A component without its nodes. */
export interface Leaf {
  readonly id: string;
  readonly kind: string;
  readonly fields?: Readonly<Record<string, unknown>>;
}

/** A component, or parts one after another, or side by side. */
export type Spec = Leaf | { readonly series: readonly Spec[] } | { readonly parallel: readonly Spec[] };

/** The circuit of a spec: closed on itself where its first part is a supply, else between two terminals. */
export function build(spec: Spec): Circuit {
  const components: object[] = [];
  let count = 0;
  const lay = (part: Spec, from: string, to: string): void => {
    if ('series' in part) {
      let at = from;
      part.series.forEach((each, i) => {
        const next = i === part.series.length - 1 ? to : `n${++count}`;
        lay(each, at, next);
        at = next;
      });
    } else if ('parallel' in part) for (const each of part.parallel) lay(each, from, to);
    else {
      const turned = part.kind === 'supply' || part.kind === 'source' ? { from: to, to: from } : { from, to };
      components.push({ id: part.id, kind: part.kind, ...part.fields, ...turned });
    }
  };
  const first = 'series' in spec ? spec.series[0] : undefined;
  const closed =
    first !== undefined && 'kind' in first && (first.kind === 'supply' || first.kind === 'source');
  lay(spec, 'a', closed ? 'a' : 'b');
  return circuitFrom({ version: 1, components, ...(closed ? {} : { terminals: ['a', 'b'] }) });
}
