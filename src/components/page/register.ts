import { version } from './version.ts';

/** A custom element class that says which version of the package it came from. */
interface Versioned extends CustomElementConstructor {
  version?: string;
}

let told = false;

/**
 * Defines a tag. The first definition wins: the same version again is silent, another version gets one console line for
 * all of its tags.
 * Where there is no page (in Node) it does nothing that can fail.
 */
export function register(tag: string, element: CustomElementConstructor): void {
  const registry = globalThis.customElements as CustomElementRegistry | undefined;
  const first: Versioned | undefined = registry?.get(tag);
  if (first) {
    const other = first.version ?? 'of unknown version';
    if (other !== version && !told)
      console.warn(`Rheolet ${other} is on this page already (<${tag}>): ${version} is left out.`);
    told ||= other !== version;
    return;
  }
  Object.assign(element, { version });
  registry?.define(tag, element);
}
