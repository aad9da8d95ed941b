import { LitElement } from 'lit';

/** What a property is while nobody gives it. */
const nothing: ReadonlyMap<unknown, unknown> = new Map<unknown, unknown>([
  [String, ''],
  [Number, 0],
  [Boolean, false],
]);

/** An element of the library: an attribute that is taken away, or a property set to null or undefined, is as if it had never been given. */
export class PageElement extends LitElement {
  /** @ignore */
  override requestUpdate(...change: Parameters<LitElement['requestUpdate']>): void {
    const [name = ''] = change;
    const { type, noAccessor } = (this.constructor as typeof LitElement).elementProperties.get(name) ?? {};
    const isTaken = type !== undefined && !noAccessor && (Reflect.get(this, name) ?? undefined) === undefined;
    if (isTaken) Reflect.set(this, name, nothing.get(type));
    else super.requestUpdate(...change);
  }
}
