import { expect } from '@open-wc/testing';
import { accessibilityTree } from '../accessibility-tree.ts';
import { boardWith, pumpLine, text, type Bench } from './bench.ts';

/** What of a board there is to be seen. */
const parts: Readonly<Record<string, (bench: Bench) => boolean>> = {
  labels: (bench) => bench.all('[data-label]').length > 0,
  values: (bench) => bench.all('.still [data-value]').length > 0,
  readings: (bench) => bench.digits('V1') !== '?',
  ribbons: (bench) => bench.ribbons !== '',
  sliders: (bench) => bench.all('rheolet-resistor, [part=switch]').length > 0,
  rules: (bench) => bench.all('rheolet-rules').length > 0,
};
const seen = (bench: Bench): string[] => Object.keys(parts).filter((name) => parts[name]?.(bench));

describe('words that a board does not have', () => {
  const all = 'values, readings, ribbons, arrows, meters, labels, sliders, conditions, menu or rules';
  for (const [attributes, sentences] of [
    [{ hide: 'reading' }, ['“reading” is not a word of hide; did you mean readings?']],
    [{ hide: 'everything' }, [`“everything” is not a word of hide; choose ${all}.`]],
    [{ show: 'rules, vlaues' }, ['“vlaues” is not a word of show; did you mean values?']],
    [{ symbols: 'us' }, ['“us” is not a word of symbols; choose iec or ansi.']],
    [{ course: 'voltages comma' }, ['“voltages” is not a word of course; did you mean voltage?']],
    [
      { hide: 'meter', course: '9' },
      [
        '“meter” is not a word of hide; did you mean meters?',
        '“9” is not a word of course; choose p.d., voltage, v, u, as-given, point, comma, 2, 3, 4, 5 or 6.',
      ],
    ],
  ] as const)
    it(`are told under the drawing, and to the page: ${JSON.stringify(attributes)}`, async () => {
      const told: string[] = [];
      const hear = ({ detail: { code, text } }: WindowEventMap['rheolet-problem']): void => {
        if (code === 'not a choice') told.push(text);
      };
      window.addEventListener('rheolet-problem', hear);
      const bench = await boardWith(pumpLine, attributes);
      window.removeEventListener('rheolet-problem', hear);
      expect(bench.all('[part=notes] p').map(text)).to.deep.equal(sentences);
      expect(told).to.deep.equal(sentences);
      for (const name of Object.keys(attributes)) bench.board.removeAttribute(name);
      await bench.settled();
      expect(bench.notes).to.equal('');
    });

  it('are none where all are known, however they are written', async () => {
    const bench = await boardWith(pumpLine, {
      show: 'RULES',
      hide: 'menu,arrows',
      symbols: 'ANSI',
      course: 'U 4',
    });
    expect(bench.all('[part=notes] p').map(text)).to.deep.equal([]);
  });
});

describe('the words of show and hide', () => {
  for (const [show, hide, expected] of [
    ['', '', 'labels values readings ribbons sliders'],
    ['rules', '', 'labels values readings ribbons sliders rules'],
    ['RULES', '', 'labels values readings ribbons sliders rules'],
    ['rules', 'rules', 'labels values readings ribbons sliders'],
    ['', 'rules', 'labels values readings ribbons sliders'],
    ['', 'labels', 'values readings ribbons sliders'],
    ['', 'ribbons', 'labels values readings sliders'],
    ['', 'sliders', 'labels values readings ribbons'],
    ['', 'labels ribbons sliders', 'values readings'],
    ['', 'labels,ribbons', 'values readings sliders'],
    ['', '  Labels ,  RIBBONS ', 'values readings sliders'],
    ['', 'readings', 'labels values sliders'],
    ['ribbons', 'readings', 'labels values ribbons sliders'],
    ['', 'arrows', 'labels values readings ribbons sliders'],
    ['', 'everything', 'labels values readings ribbons sliders'],
    ['labels', 'labels', 'values readings ribbons sliders'],
    ['rules', 'sliders', 'labels values readings ribbons rules'],
  ] as const)
    it(`show="${show}" hide="${hide}" leaves ${expected}`, async () => {
      const bench = await boardWith(pumpLine, { show, hide });
      expect(seen(bench)).to.deep.equal(expected.split(' '));
    });

  it('hidden values are drawn nowhere, and shown again they stand where they stood', async () => {
    const bench = await boardWith(pumpLine);
    const numbers = (): string[] => bench.all('[data-value]').map(text);
    const before = numbers();
    bench.board.hide = 'values meters';
    await bench.settled();
    expect(numbers()).to.deep.equal([]);
    bench.board.hide = '';
    await bench.settled();
    expect(numbers()).to.deep.equal(before);
  });
});

describe('the name of a diagram', () => {
  for (const [label, name] of [
    ['', 'Circuit diagram'],
    ['The bilge pump', 'The bilge pump'],
  ] as const)
    it(`label="${label}" is heard as ${name}`, async () => {
      const bench = await boardWith(pumpLine, { label });
      expect(bench.find('.still').getAttribute('aria-label')).to.equal(name);
      expect(await bench.board.toSVG()).to.contain(name);
    });
});

describe('a hidden value is told nowhere', () => {
  for (const circuit of [
    'B1 6 V + R1 137 Ω hidden + A1',
    'B1 6 V + R1 [100..200] 137 Ω hidden',
    'B1 6 V + (lamp L1 137 Ω hidden ∥ R2 4 Ω)',
    'B1 13.7 V r 1 Ω hidden + R1 12 Ω',
  ])
    it(circuit, async () => {
      const bench = await boardWith(circuit);
      const id = /(\w+)(?: \[[^\]]*\])? 13/.exec(circuit)?.[1] ?? '';
      bench.component(id).focus();
      await bench.settled();
      const own = bench.all('*').flatMap((part) => [...part.attributes].map(({ value }) => value));
      const tree = await accessibilityTree();
      const said = own.filter((value) => !/^[\d\sMLAZHV.,-]+$/.test(value)).join('\n');
      for (const [where, what] of [
        ['names', said],
        ['caption', bench.caption],
        ['table of values', bench.all('text').map(text).join()],
        ['accessible tree', (tree.match(/"name":"[^"]*"/g) ?? []).join()],
        ['SVG', (await bench.board.toSVG()).replace(/<[^>]*>/g, ' ')],
      ])
        expect(what, where).to.not.match(/\b(137|13\.7)\b/);
    });
});
