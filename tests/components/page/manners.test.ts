import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import '../../../src/components/all.ts';
import { emulateFeatures, type Features } from '../emulate-features.ts';
import { Bench, pumpLine, quayLine } from '../board/bench.ts';

/** A page as a teacher makes it. */
async function page(): Promise<HTMLElement> {
  const root = await fixture<HTMLElement>(
    html`<main>
      <rheolet-board id="quay" circuit=${quayLine}>The quay lights.</rheolet-board>
      <p>
        Turn the fog-lamp control <rheolet-resistor board="quay" of="R1"></rheolet-resistor>: the main ammeter
        reads <rheolet-value board="quay" of="I_A1"></rheolet-value>.
      </p>
      <rheolet-board id="pump" circuit=${pumpLine} hide="readings">The pump.</rheolet-board>
      <rheolet-board id="short" circuit="B1 6 V + A1">A mistake on purpose.</rheolet-board>
    </main>`,
  );
  await Promise.all([...root.querySelectorAll('rheolet-board')].map(({ ready }) => ready));
  await nextFrame();
  await nextFrame();
  return root;
}

const schemes: readonly [string, Features, string][] = [
  ['the light scheme', {}, 'light'],
  ['the dark scheme', { 'prefers-color-scheme': 'dark' }, 'light dark'],
  ['forced colours', { 'forced-colors': 'active' }, 'light'],
  ['more contrast', { 'prefers-contrast': 'more' }, 'light'],
];

describe('a page with the library is accessible', () => {
  for (const [name, features, scheme] of schemes) {
    it(`in ${name}`, async () => {
      await emulateFeatures(features);
      document.documentElement.style.setProperty('color-scheme', scheme);
      document.documentElement.style.setProperty('background', 'Canvas');
      const root = await page();
      await expect(root).to.be.accessible();
      root.querySelector('rheolet-board')?.setAttribute('circuit', 'B1 6 V - R1');
      await nextFrame();
      await expect(root).to.be.accessible();
      document.documentElement.style.removeProperty('color-scheme');
      document.documentElement.style.removeProperty('background');
    });
  }
});

/** The relative luminance and the contrast of two colours (WCAG 2.2, definitions of the same names). */
function contrast(a: string, b: string): number {
  const luminance = (colour: string): number => {
    const [r = 0, g = 0, blue = 0] = (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map((part) => {
      const share = Number(part) / (colour.startsWith('color(') ? 1 : 255);
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * blue;
  };
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

describe('ink on paper', () => {
  for (const scheme of ['light', 'dark']) {
    it(`has ribbons that stand out from the paper, and wires that stand out from the ribbons: ${scheme}`, async () => {
      const root = await page();
      root.style.setProperty('color-scheme', scheme);
      const bench = new Bench(root.querySelector('rheolet-board')!);
      const paper = getComputedStyle(bench.board).backgroundColor;
      const ribbon = getComputedStyle(bench.path).fill;
      const wire = getComputedStyle(bench.find('.wire')).stroke;
      expect(contrast(ribbon, paper)).to.be.at.least(3);
      expect(contrast(wire, ribbon)).to.be.at.least(3);
      expect(contrast(wire, paper)).to.be.at.least(7);
    });
  }

  it('is black on white in print, with ribbons in one grey, whatever the scheme and the colours of the page', async () => {
    await emulateFeatures({ 'prefers-color-scheme': 'dark' }, 'print');
    const root = await page();
    root.style.setProperty('color-scheme', 'dark');
    for (const name of ['ink', 'soft', 'line', 'current'])
      root.style.setProperty(`--rheolet-${name}`, 'gold');
    const bench = new Bench(root.querySelector('rheolet-board')!);
    expect(getComputedStyle(bench.find('.wire')).stroke).to.equal('rgb(0, 0, 0)');
    expect(getComputedStyle(bench.find('[part=key]')).color).to.equal('rgb(0, 0, 0)');
    expect(getComputedStyle(bench.path).fill).to.equal('rgb(179, 179, 179)');
    expect(getComputedStyle(bench.find('.acts')).display).to.equal('none');
  });

  it('is not torn between two sheets, and has nothing to press there; what hints at the pointer is left out', async () => {
    const root = await page();
    const bench = new Bench(root.querySelector('rheolet-board')!);
    const hint = (): string => getComputedStyle(bench.find('.hint')).display;
    expect(hint()).not.to.equal('none');
    bench.component('R1').dispatchEvent(new MouseEvent('click', { bubbles: true }));
    await bench.settled();
    expect(getComputedStyle(bench.find('.alter')).display).not.to.equal('none');
    await emulateFeatures({}, 'print');
    expect(getComputedStyle(bench.find('.alter')).display).to.equal('none');
    const { breakInside, paddingInlineStart, colorScheme } = getComputedStyle(bench.board);
    expect([breakInside, paddingInlineStart, colorScheme]).to.deep.equal(['avoid', '0px', 'light']);
    bench.component('R1').dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
  });

  it('has no hint at the pointer in print, and lamps that do not glow', async () => {
    const root = await page();
    const bench = new Bench(root.querySelector('rheolet-board')!);
    await emulateFeatures({}, 'print');
    expect(getComputedStyle(bench.find('.hint')).display).to.equal('none');
    const light = bench.find('.light');
    expect(getComputedStyle(light).stopColor).to.equal('rgba(0, 0, 0, 0)');
  });

  it('has the reader’s own colours where those are forced', async () => {
    await emulateFeatures({ 'forced-colors': 'active' });
    const root = await page();
    const bench = new Bench(root.querySelector('rheolet-board')!);
    const probe = document.createElement('span');
    root.append(probe);
    const forced = (name: string): string => {
      probe.style.color = name;
      return getComputedStyle(probe).color;
    };
    probe.style.forcedColorAdjust = 'none';
    expect(getComputedStyle(bench.find('.wire')).stroke).to.equal(forced('CanvasText'));
    expect(getComputedStyle(bench.path).fill).to.equal(forced('color-mix(in srgb, Highlight 60%, Canvas)'));
  });

  for (const scheme of ['light', 'dark'] as const)
    it(`shows what is drawn on ribbons and lit lamps where colours are forced, ${scheme}`, async () => {
      await emulateFeatures({ 'forced-colors': 'active', 'prefers-color-scheme': scheme });
      const root = await page();
      const bench = new Bench(root.querySelector('rheolet-board')!);
      const ribbon = getComputedStyle(bench.path).fill;
      const wire = getComputedStyle(bench.find('.wire')).stroke;
      expect(contrast(ribbon, getComputedStyle(bench.board).backgroundColor)).to.be.at.least(3);
      expect(contrast(wire, ribbon)).to.be.at.least(3);
      expect(contrast(wire, getComputedStyle(bench.find('.light')).stopColor)).to.be.at.least(4.5);
    });

  it('takes its colours from the page', async () => {
    const root = await page();
    root.style.setProperty('--rheolet-current', 'rgb(1, 2, 3)');
    const bench = new Bench(root.querySelector('rheolet-board')!);
    expect(getComputedStyle(bench.path).fill).to.equal('rgb(1, 2, 3)');
  });

  it('holds still: nothing is animated', async () => {
    const root = await page();
    const animated = [...root.querySelectorAll('*')].flatMap((element) =>
      element.getAnimations({ subtree: true }),
    );
    expect(animated).to.have.length(0);
  });
});

describe('a hostile page', () => {
  it('may be right to left, large, and set other styles on everything', async () => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('* { all: revert; box-sizing: border-box; line-height: 1 } html { font-size: 28px }');
    document.adoptedStyleSheets = [sheet];
    document.documentElement.dir = 'rtl';
    const root = await page();
    root.style.setProperty('width', '320px');
    await nextFrame();
    await nextFrame();
    for (const board of root.querySelectorAll('rheolet-board')) {
      expect(board.scrollWidth, board.id).to.be.at.most(320);
      expect(new Bench(board).all('[data-id]').length).to.be.greaterThan(1);
    }
    document.documentElement.removeAttribute('dir');
    document.adoptedStyleSheets = [];
  });

  it('has no style attribute and no style element from us', async () => {
    const root = await page();
    const all = (node: Element | ShadowRoot): Element[] =>
      [...node.querySelectorAll('*')].flatMap((each) => [
        each,
        ...(each.shadowRoot ? all(each.shadowRoot) : []),
      ]);
    expect(
      all(root).filter((element) => element.hasAttribute('style') || element.localName === 'style'),
    ).to.have.length(0);
  });
});

describe('a thousand additions and removals', () => {
  it('leave nothing behind: the page listens to no more than before', async () => {
    const root = await page();
    const board = root.querySelector('rheolet-board')!;
    const value = root.querySelector('rheolet-value')!;
    const original = board.subscribe.bind(board);
    let joined = 0;
    board.subscribe = (listener) => {
      const leave = original(listener);
      joined += 1;
      return () => {
        joined -= 1;
        leave();
      };
    };
    const place = value.parentElement!;
    for (let round = 0; round < 1000; round += 1) {
      value.remove();
      place.append(value);
    }
    expect(joined).to.equal(1);
  });
});
