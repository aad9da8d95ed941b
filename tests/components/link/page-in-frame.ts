import { Reader, StubBoard } from './reader.ts';

/** Defines a tag of this page, once. */
function define(tag: string): void {
  if (!customElements.get(tag)) customElements.define(tag, tag === 'x-reader' ? Reader : StubBoard);
}

Object.assign(window, { define });
