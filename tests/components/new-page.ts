/** A page in a frame of its own, with its own registry of elements, so that tags can be defined late. */
export interface Page {
  readonly frame: HTMLIFrameElement;
  readonly body: HTMLElement;
  readonly define: (tag: string) => void;
}

/** Opens a page that runs one module, once it is loaded: until then a browser may swap the empty page of a new frame for another. */
export async function newPage(module: URL): Promise<Page> {
  const frame = document.createElement('iframe');
  frame.width = '700';
  frame.height = '500';
  const open = new Promise((done) => (frame.onload = done));
  document.body.append(frame);
  await open;
  const inside = frame.contentDocument!;
  const script = inside.createElement('script');
  script.type = 'module';
  script.src = module.href;
  const ready = new Promise((done) => (script.onload = done));
  inside.head.append(script);
  await ready;
  const { define } = frame.contentWindow as unknown as Pick<Page, 'define'>;
  return { frame, body: inside.body, define };
}
