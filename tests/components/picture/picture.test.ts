import { subscript } from '../../../src/engine/core.ts';
import { expect } from '@open-wc/testing';
import type { PictureOptions } from '../../../src/components/picture/index.ts';
import { boardWith, comparing, pumpLine, quayLine, text, type Bench } from '../board/bench.ts';
import { eventually } from '../eventually.ts';

async function picture({ board }: Bench, options?: PictureOptions): Promise<Document> {
  const read = new DOMParser().parseFromString(await board.toSVG(options), 'image/svg+xml');
  expect(read.querySelector('parsererror')).to.equal(null);
  return read;
}
const blanks = (all: readonly string[]): string[] => all.map((each) => each.replace(/[\s\u202f]/g, ' '));
const texts = (read: ParentNode): string[] => blanks([...read.querySelectorAll('text')].map(text));
const values = (read: ParentNode): string[] =>
  blanks([...read.querySelectorAll('[data-value]')].map(text)).sort();
const ribbons = (read: ParentNode): string => read.querySelector('.ribbons')?.getAttribute('d') ?? '';

/** The pixels of a PNG, one channel after another. */
async function pixels(blob: Blob | undefined): Promise<ImageData> {
  if (!blob) throw new Error('no picture');
  const image = await createImageBitmap(blob);
  const pen = new OffscreenCanvas(image.width, image.height).getContext('2d');
  if (!pen) throw new Error('no canvas');
  pen.drawImage(image, 0, 0);
  return pen.getImageData(0, 0, image.width, image.height);
}
const colours = ({ data }: ImageData): (readonly [number, number, number])[] =>
  Array.from({ length: data.length / 4 }, (_, at) => [
    data[4 * at] ?? 0,
    data[4 * at + 1] ?? 0,
    data[4 * at + 2] ?? 0,
  ]);

describe('a picture of a board as SVG', () => {
  it('has the readings and the values of the moment when it is asked for', async () => {
    const bench = await boardWith(quayLine);
    bench.board.set('R1', 24);
    const asked = picture(bench);
    bench.board.set('R1', 6);
    // L1 has 6 V across 8 Ω, R1 6 V across 24 Ω: 0.75 A and 0.25 A, 1 A together.
    expect(values(await asked)).to.deep.equal(['0.750 A', '1.00 A', '24 Ω', '6 V', '8 Ω']);
    await bench.settled();
    const later = await picture(bench);
    expect(values(later)).to.deep.equal(values(bench.find('.stage')));
    expect(ribbons(later)).to.equal(bench.ribbons);
  });

  for (const [hide, gone, left] of [
    ['labels', /^(B1|A1|R1|L1|A2)$/, '0.750 A'],
    ['values', /Ω|6 V/, '0.750 A'],
    ['meters', /0\.750/, '12 Ω'],
    ['readings', /0\.750/, '?'],
  ] as const)
    it(`leaves out what hide="${hide}" hides`, async () => {
      const shown = texts(await picture(await boardWith(quayLine)));
      const kept = texts(await picture(await boardWith(quayLine, { hide })));
      expect(shown.some((each) => gone.test(each))).to.equal(true);
      expect(kept.filter((each) => gone.test(each))).to.deep.equal([]);
      expect(kept).to.include(left);
    });

  it('leaves out the ribbons and their arrowheads, and the light, as the board does', async () => {
    const shown = await boardWith(pumpLine);
    const [plain, bare] = await Promise.all([
      boardWith(pumpLine, { hide: 'arrows' }),
      boardWith(pumpLine, { hide: 'ribbons' }),
    ]);
    expect(ribbons(await picture(plain))).to.equal(plain.ribbons);
    expect(ribbons(await picture(plain)).length).to.be.lessThan(ribbons(await picture(shown)).length);
    expect((await picture(bare)).querySelector('.ribbons')).to.equal(null);
    const covered = await boardWith(pumpLine, { hide: 'readings' });
    const lights = async (bench: Bench): Promise<number> =>
      (await picture(bench, { style: 'light' })).querySelectorAll('.light').length;
    expect(await lights(shown)).to.be.greaterThan(0);
    expect(await lights(covered)).to.equal(0);
  });

  it('marks what is held', async () => {
    const bench = await boardWith(quayLine);
    bench.button('Hold').click();
    await comparing(bench);
    bench.board.set('R1', 24);
    await bench.settled();
    const read = await picture(bench);
    expect(read.querySelector('.held')?.getAttribute('d')).to.equal(
      bench.find('.moving .held').getAttribute('d'),
    );
    expect(values(read)).to.deep.equal(values(bench.find('.stage')));
    expect(values(read).join()).to.contain('▼');
  });

  it('for print is black, white and one grey, with a line to write on for what is not told', async () => {
    const circuit = 'B1 6 V + A1 + R1 12 Ω hidden + L1 8 Ω';
    const bench = await boardWith(circuit, { hide: 'readings', show: 'ribbons' });
    const read = await picture(bench, { style: 'print' });
    const used = new Set(
      [...read.querySelectorAll('*')]
        .flatMap((each) => [each.getAttribute('fill'), each.getAttribute('stroke')])
        .filter((colour) => colour !== null && colour !== 'none'),
    );
    expect([...used].sort()).to.deep.equal(['#000', '#b3b3b3', '#fff']);
    const lines = values(read).filter((each) => /^_{4,}$/.test(each));
    expect(lines).to.have.length(2);
    expect(texts(read)).to.not.include('?');
    expect(await bench.board.toSVG({ style: 'print' })).to.not.match(/\b12\b.Ω/);
    expect(values(await picture(bench, { style: 'light' })).filter((each) => each === '?')).to.have.length(2);
  });

  for (const font of ['serif', 'sans-serif', 'monospace', 'DejaVu Sans', 'Liberation Sans', 'cursive'])
    it(`keeps its texts apart and within its edges in ${font}`, async () => {
      const circuit =
        'B1 6 V r 0.5 Ω + A1 + S1 closed + (R1 [4..40] 12 Ω ∥ R2 4k7 ±5% ∥ (A2 + L1 6 V 3 W)) + R3 1.25 MΩ; V1 across L1';
      const read = await picture(await boardWith(circuit), { style: 'print' });
      const svg = document.importNode(read.documentElement, true);
      svg.setAttribute('font-family', font);
      document.body.append(svg);
      const frame = svg.getBoundingClientRect();
      const boxes = [...svg.querySelectorAll('text')].map((each) => each.getBoundingClientRect());
      svg.remove();
      expect(boxes.length).to.be.greaterThan(15);
      for (const [place, box] of boxes.entries()) {
        expect(box.left, `${place} left`).to.be.at.least(frame.left - 0.5);
        expect(box.right, `${place} right`).to.be.at.most(frame.right + 0.5);
        for (const other of boxes.slice(place + 1)) {
          const across = Math.min(box.right, other.right) - Math.max(box.left, other.left);
          const down = Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top);
          // Lines of text stand close under one another: their boxes may touch by a descender, lower by as much as a subscript stands.
          expect(Math.min(across, down), `${place}`).to.be.at.most(5 + subscript.drop);
        }
      }
    });
});

describe('a picture of a board as PNG', () => {
  it('shows what its SVG shows', async () => {
    const bench = await boardWith('B1 6 V + S1 closed + (R1 [4..40] 12 Ω broken ∥ (A1 + L1 8 Ω))');
    for (const style of ['light', 'print'] as const) {
      const url = URL.createObjectURL(
        new Blob([await bench.board.toSVG({ style })], { type: 'image/svg+xml' }),
      );
      const image = new Image();
      image.src = url;
      await image.decode();
      const canvas = new OffscreenCanvas(image.width, image.height);
      canvas.getContext('2d')?.drawImage(image, 0, 0);
      URL.revokeObjectURL(url);
      const [drawn, painted] = await Promise.all([
        canvas.convertToBlob().then(pixels),
        bench.board.toPNG({ style, scale: 1 }).then(pixels),
      ]);
      expect([painted.width, painted.height]).to.deep.equal([drawn.width, drawn.height]);
      const [one, other] = [colours(drawn), colours(painted)];
      const far = one.filter((rgb, at) =>
        rgb.some((each, part) => Math.abs(each - (other[at]?.[part] ?? 0)) > 60),
      );
      // Letters are smoothed in another way; a missing symbol or ribbon would be more than this.
      expect(far.length / one.length, style).to.be.lessThan(0.004);
    }
  });

  it('has three pixels for each, or as many as are asked for, on a ground of its own', async () => {
    const bench = await boardWith(quayLine);
    const [usual, wide] = await Promise.all([bench.board.toPNG(), bench.board.toPNG({ scale: 5 })]);
    const [three, five] = await Promise.all([pixels(usual), pixels(wide)]);
    const width = Number((await picture(bench)).documentElement.getAttribute('width'));
    expect([three.width, five.width]).to.deep.equal([3 * width, 5 * width]);
    expect(usual?.type).to.equal('image/png');
    expect([...three.data.slice(0, 4)]).to.deep.equal([255, 254, 251, 255]);
  });

  it('for print has no colour at all', async () => {
    const { board } = await boardWith(pumpLine);
    const read = await pixels(await board.toPNG({ style: 'print', scale: 1 }));
    expect(colours(read).filter(([r, g, b]) => r !== g || g !== b)).to.deep.equal([]);
  });

  it('is none where nothing is drawn', async () => {
    const { board } = await boardWith('B1 6 V + + R1');
    expect(await board.toPNG()).to.equal(undefined);
    expect(await board.toSVG({ style: 'print' })).to.equal('');
  });
});

describe('the entries of the menu that save a picture', () => {
  for (const [label, name, type] of [
    ['Save as picture for printing', 'quay.png', 'image/png'],
    ['Save as SVG', 'quay.svg', 'image/svg+xml'],
  ] as const)
    it(`${label} saves ${name}, and says so`, async () => {
      const bench = await boardWith(quayLine, { id: 'quay' });
      const files: [string, string][] = [];
      const make = URL.createObjectURL.bind(URL);
      const blobs: Blob[] = [];
      URL.createObjectURL = (blob: Blob) => {
        blobs.push(blob);
        return make(blob);
      };
      HTMLAnchorElement.prototype.click = function () {
        files.push([this.download, blobs.at(-1)?.type ?? '']);
      };
      try {
        bench.button('Copy or save…').click();
        await eventually(() => bench.all('#copy button').length > 0);
        bench.button(label).click();
        await eventually(() => text(bench.find('#copy')).includes('Saved.'), 'it is saved');
      } finally {
        URL.createObjectURL = make;
        Reflect.deleteProperty(HTMLAnchorElement.prototype, 'click');
      }
      expect(files).to.deep.equal([[name, type]]);
      expect(blobs[0]?.size).to.be.greaterThan(1000);
      await expect(bench.board).to.be.accessible();
    });

  it('are not there where there is a table in the place of a drawing', async () => {
    const many = Array.from({ length: 201 }, (_, at) => `R${at + 1} 1 Ω`).join(' + ');
    const bench = await boardWith(`B1 6 V + ${many}`);
    bench.button('Copy or save…').click();
    await eventually(() => bench.all('#copy button').length > 0);
    expect(bench.all('#copy button').map(text).join()).to.not.contain('Save');
  });
});
