import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import {
  drawSchematic,
  labelParts,
  subscript,
  textSize,
  type Drawing,
  type PlacedLabel,
} from '../../../src/engine/schematic/index.ts';
import { drawings } from './random-drawings.ts';

type Rows = readonly (readonly [letters: string, widths: string])[];

/**
 * Advance widths in 1/2048 of the size of DejaVu Sans 2.37, a free font that is wider than the usual system fonts, as a browser
 * measures them; the labels are bold.
 */
const book: Rows = [
  [
    'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
    '1401 1405 1430 1577 1294 1178 1587 1540 604 604 1343 1141 1767 1532 1612 1235 1612 1423 1300 1251 1499 1401 2025 1403 1251 1403',
  ],
  [
    'abcdefghijklmnopqrstuvwxyz',
    '1255 1300 1126 1300 1260 721 1300 1298 569 569 1186 569 1995 1298 1253 1300 1300 842 1067 803 1298 1212 1675 1212 1212 1075',
  ],
  ['0123456789', '1303 1303 1303 1303 1303 1303 1303 1303 1303 1303'],
  ['.,?/-±%Ωµ\u202f =−_', '651 651 1087 690 739 1716 1946 1565 1303 409 651 1716 1716 1024'],
];
const bold: Rows = [
  [
    'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
    '1585 1561 1503 1700 1399 1399 1681 1714 762 762 1587 1305 2038 1714 1741 1501 1741 1577 1475 1397 1663 1585 2259 1579 1483 1485',
  ],
  [
    'abcdefghijklmnopqrstuvwxyz',
    '1382 1466 1214 1466 1389 891 1466 1458 702 702 1362 702 2134 1458 1407 1466 1466 1010 1219 979 1458 1335 1892 1321 1335 1192',
  ],
  ['0123456789', '1425 1425 1425 1425 1425 1425 1425 1425 1425 1425'],
];
const advances = (rows: Rows): ReadonlyMap<string, number> =>
  new Map(
    rows.flatMap(([letters, widths]) => {
      const numbers = widths.split(' ').map(Number);
      return Array.from(letters, (letter, i) => [letter, numbers[i] ?? NaN] as const);
    }),
  );
const fonts = { label: advances(bold), value: advances(book) };

const lineWidth = (text: string, role: 'label' | 'value'): number =>
  (Array.from(text, (letter) => fonts[role].get(letter) ?? NaN).reduce((a, b) => a + b, 0) / 2048) * textSize;

const widthOf = (text: string, role: PlacedLabel['role']): number => {
  if (role === 'value' || role === 'reading') return lineWidth(text, 'value');
  const [letters, below] = labelParts(text);
  return lineWidth(letters, 'label') + subscript.size * lineWidth(below, 'label');
};

function drawn(line: string): Drawing {
  const drawing = drawSchematic(parseCircuit(line));
  if (drawing.kind === 'irreducible') throw new Error(drawing.reason);
  return drawing;
}

test('every label and value has room for its text in a wide font', () => {
  for (const { drawing } of drawings()) {
    for (const { text, role, box } of drawing.labels) {
      assert.ok(box.width >= widthOf(text, role), `${text}: ${box.width}`);
    }
  }
});

test('every letter and digit has room', () => {
  for (const letter of 'ABCDEFGHIJKLMNOPQRSTUVWXYZ') {
    for (const small of 'abcdefghijklmnopqrstuvwxyz') {
      const label = `${letter}${small}${small}${small}0`;
      const [box] = drawn(`resistor ${label} 5 MΩ`).labels.map((each) => each.box);
      assert.ok(box && box.width >= widthOf(label, 'label'), label);
    }
  }
});

test('a supply that can be varied has room for the text of every setting, below 0 too', () => {
  const boxes = ['-11.75 V r [0..10 step 0.5] 9.5 Ω', '6 V r [0..10 step 0.5] 0 Ω'].map(
    (setting) =>
      drawn(`B1 [-12..12 step 0.25] ${setting} + R1 5 Ω`).labels.find(
        ({ id, role }) => id === 'B1' && role === 'value',
      )?.box,
  );
  assert.deepEqual(boxes[1], boxes[0]);
  assert.ok(boxes[0] && boxes[0].width >= widthOf('-11.75\u202fV, r 10.0\u202fΩ', 'value'));
});

test('a slider has room for the text of every setting', () => {
  const line = (value: string): string => `B1 6 V + R1 [0.5..100 step 0.25] ${value} kΩ`;
  for (const value of ['0.5', '88.75', '100']) {
    const label = drawn(line(value)).labels.find(({ id, role }) => id === 'R1' && role === 'value');
    assert.ok(label && label.box.width >= widthOf('88.75\u202fkΩ', 'value'));
  }
});
