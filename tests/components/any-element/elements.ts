import '../../../src/components/all.ts';

const source = await fetch('/src/components/all.ts');
const names = [...(await source.text()).matchAll(/\.\/([\w-]+)\/define/g)].map(([, name = '']) => name);

/** The tags of all elements, in the order in which the library names them. */
export const tags: readonly string[] = names.map((name) => `rheolet-${name}`);

/** The attributes that an element listens to, as its class says. */
export function attributesOf(tag: string): readonly string[] {
  const { observedAttributes = [] } = customElements.get(tag) as { observedAttributes?: string[] };
  return observedAttributes;
}
