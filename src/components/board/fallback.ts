const blocks = /^(br|p|div|li)$/;

const isElement = (node: Node): node is Element => node.nodeType === Node.ELEMENT_NODE;
const isOurs = ({ localName }: Element): boolean => localName.startsWith('rheolet-');

/** Whether a child of a board is more than the text in place of the drawing: it is, or holds, another element of the library. */
export function isContent(node: Node): boolean {
  return isElement(node) && (isOurs(node) || [...node.querySelectorAll('*')].some(isOurs));
}

/** The text of a board's children as lines; editors put `<p>` and `<br>` where a line ends. */
export function textOf(nodes: Iterable<Node>): string {
  let text = '';
  for (const node of nodes) {
    if (node.nodeType === Node.TEXT_NODE) text += node.nodeValue ?? '';
    else if (isElement(node) && !isContent(node)) {
      text += textOf(node.childNodes);
      if (blocks.test(node.localName)) text += '\n';
    }
  }
  return text;
}

/** What stands in a board beside its drawing: all that the page gives it, or other elements alone. */
export function standing(board: Element, all: boolean): readonly (Element | Text)[] {
  const nodes = [...board.childNodes].filter((node) => node instanceof Element || node instanceof Text);
  return all ? nodes : nodes.filter(isContent);
}
