import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { formOf, supplyForms } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { fields } from '../../../src/engine/notation/fields.ts';

const lines = [...readFileSync('demo/gallery.html', 'utf8').matchAll(/ circuit="([^"]+)"/g)]
  .map(([, line = '']) => line)
  // This one shows what a mistake looks like.
  .filter((line) => !line.includes('1,000'));
const components = lines.flatMap((line) => parseCircuit(line).components);

test('the gallery shows every kind of component', () => {
  const shown: readonly string[] = components.map(({ kind }) => kind);
  assert.deepEqual(
    Object.keys(fields).filter((kind) => !shown.includes(kind)),
    [],
  );
});

test('the gallery shows every form of a supply, and every property that a component may have', () => {
  const forms = components.map((each) => (each.kind === 'supply' ? formOf(each) : ''));
  assert.deepEqual(
    supplyForms.filter((form) => !forms.includes(form)),
    [],
  );
  const told = components.flatMap((each) => Object.keys(each));
  const all = Object.values(fields).flatMap((of) => Object.values(of));
  // What a diode conducts at is given where it is not as usual.
  const shown = ['condition', 'fault', 'hidden', ...all].filter((field) => field !== 'forwardVoltage');
  assert.deepEqual(
    shown.filter((field) => !told.includes(field)),
    [],
  );
});
