import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { csvOf } from '../../../src/components/csv/csv.ts';
import { bench, box, button, press, quay } from './bench.ts';
import { readCSV } from './read-csv.ts';

const characters = 'ab 1,;".\r\n=+-@\t−Ω0'.split('');
const text = fc.string({ unit: fc.constantFrom(...characters), maxLength: 8 });
const table = fc
  .integer({ min: 1, max: 5 })
  .chain((width) => fc.array(fc.array(text, { minLength: width, maxLength: width }), { minLength: 1 }));
const separators = { '.': ',', ',': ';' } as const;

describe('a table as CSV', () => {
  it('is read back, cell by cell, by RFC 4180', () => {
    fc.assert(
      fc.property(table, fc.constantFrom('.', ','), (rows, sign) => {
        const read = readCSV(csvOf(rows, sign), separators[sign]);
        const plain = (cell: string): string => cell.replace(/^'(?=[=+\-@−\t\r])/, '').replace(/^−/, '-');
        expect(read.map((row) => row.map(plain))).to.deep.equal(rows.map((row) => row.map(plain)));
      }),
    );
  });

  it('has the same number of fields in every line', () => {
    fc.assert(
      fc.property(table, fc.constantFrom('.', ','), (rows, sign) => {
        const read = readCSV(csvOf(rows, sign), separators[sign]);
        expect(new Set(read.map(({ length }) => length)).size).to.equal(1);
      }),
    );
  });

  it('holds no cell that a spreadsheet would take for a formula', () => {
    fc.assert(
      fc.property(text, (cell) => {
        const [[read]] = readCSV(csvOf([[cell, '']], '.'), ',') as [[string, string]];
        if (/^[=+\-@\t\r]/.test(read)) expect(read).to.match(/^[-+]\d+([.,]\d+)?$/);
      }),
    );
  });

  const rows = [
    ['−0.500', '-0.500'],
    ['4.7', '4.7'],
    ['-3', '-3'],
    ['+3', '+3'],
    ['=1+1', "'=1+1"],
    ['-2+3', "'-2+3"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['−x', "'−x"],
    ['say "no"', '"say ""no"""'],
    ['0,5', '"0,5"'],
    ['a;b', '"a;b"'],
    ['?', '?'],
  ] as const;
  for (const [cell, written] of rows)
    it(`${cell} is written ${written}`, () => expect(csvOf([[cell]], '.')).to.equal(`${written}\r\n`));

  it('of live readings has the figures of the course', async () => {
    const made = await bench(quay, { of: 'R1 L1', totals: '' });
    expect(made.element.toCSV()).to.equal(
      [
        'Component,V / V,I / A,R / Ω,P / W',
        'R1,3.60,0.300,12.0,1.08',
        'L1,2.40,0.100,24.0,0.240',
        'Total,6.00,0.300,20.0,1.80',
        '',
      ].join('\r\n'),
    );
  });

  it('has semicolons in a course with a decimal comma', async () => {
    const made = await bench(quay, { of: 'R1', columns: 'V I' });
    await made.show(quay, { course: 'comma U' });
    expect(made.element.toCSV()).to.equal('Component;U / V;I / A\r\nR1;3,60;0,300\r\n');
  });

  it('holds what the pupil typed, and nothing where nothing is', async () => {
    const made = await bench(quay, { of: 'R1', columns: 'V I', mode: 'blank' });
    const typed = box(made, 'p.d. across R1');
    typed.value = '=HYPERLINK("x")';
    typed.dispatchEvent(new Event('input'));
    expect(made.element.toCSV()).to.equal(`Component,V / V,I / A\r\nR1,"'=HYPERLINK(""x"")",\r\n`);
  });

  it('holds what was recorded', async () => {
    const made = await bench('B1 6 V + A1 reversed + R1 [1..30] 12 Ω', { record: 'R_R1 I_A1' });
    await press(made, 'Record');
    expect(made.element.toCSV()).to.equal('No.,R_R1 / Ω,I_A1 / A\r\n1,12.0,-0.500\r\n');
  });

  it('is nothing without a board', async () => {
    const made = await bench('B1 6 V +');
    expect(made.element.toCSV()).to.equal('');
  });
});

describe('it goes out', () => {
  const origin = Object.getOwnPropertyDescriptor(window, 'origin')!;
  afterEach(() => {
    Reflect.deleteProperty(navigator.clipboard, 'writeText');
    Object.defineProperty(window, 'origin', origin);
  });

  it('to the clipboard, and says so', async () => {
    const copied: string[] = [];
    navigator.clipboard.writeText = (csv) => Promise.resolve(void copied.push(csv));
    const made = await bench(quay, { of: 'R1' });
    await press(made, 'Copy as CSV');
    await made.element.updateComplete;
    expect(copied).to.deep.equal([made.element.toCSV()]);
    expect(made.part('notice')).to.equal('Copied.');
  });

  it('into a box, selected, where the page may not copy', async () => {
    navigator.clipboard.writeText = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
    const made = await bench(quay, { of: 'R1' });
    await press(made, 'Copy as CSV');
    await made.element.updateComplete;
    const [shown] = made.all('textarea') as HTMLTextAreaElement[];
    expect(shown?.readOnly).to.equal(true);
    expect(made.part('notice')).to.equal('This page may not copy by itself: copy the selected text.');
    await expect(made.element).to.be.accessible();
    expect(shown?.value.replaceAll('\n', '\r\n')).to.equal(made.element.toCSV());
    expect(shown?.selectionEnd).to.equal(shown?.value.length);
  });

  it('into a file that says it is UTF-8, by the name of the board', async () => {
    const saved: { readonly name: string; readonly blob: Promise<Response> }[] = [];
    const made = await bench(quay, { of: 'R1', board: 'quay' });
    const save = button(made, 'Save as CSV');
    HTMLAnchorElement.prototype.click = function click() {
      saved.push({ name: this.download, blob: fetch(this.href) });
    };
    save.dispatchEvent(new MouseEvent('click'));
    Reflect.deleteProperty(HTMLAnchorElement.prototype, 'click');
    expect(saved.map(({ name }) => name)).to.deep.equal(['quay.csv']);
    const response = await saved[0]!.blob;
    expect(response.headers.get('content-type')).to.equal('text/csv');
    const bytes = new Uint8Array(await response.arrayBuffer());
    expect([...bytes.slice(0, 3)], 'the mark').to.deep.equal([0xef, 0xbb, 0xbf]);
    expect(new TextDecoder().decode(bytes)).to.equal(made.element.toCSV());
  });

  it('into a box, where a frame has no origin and may save nothing', async () => {
    Object.defineProperty(window, 'origin', { value: 'null', configurable: true });
    const made = await bench(quay, { of: 'R1' });
    await press(made, 'Save as CSV');
    await made.element.updateComplete;
    expect(made.all('textarea')).to.have.length(1);
  });
});
