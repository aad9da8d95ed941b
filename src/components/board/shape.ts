/** An SVG element with its attributes and children; built by DOM calls, since a page may refuse markup from text. */
export function shape<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Readonly<Record<string, string | number>>,
  ...children: readonly (Node | string)[]
): SVGElementTagNameMap[Tag] {
  const made = document.createElementNS('http://www.w3.org/2000/svg', tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, String(value));
  made.append(...children);
  return made;
}

/** Sets an attribute where it changes. */
export function put(element: Element, name: string, value: string): void {
  if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}
