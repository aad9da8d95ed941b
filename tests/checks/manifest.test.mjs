// Whatever a page may use of an element is described in the manifest, and nothing is missing from it.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { withTables } from '../run/element-tables.mjs';

const { modules } = JSON.parse(readFileSync('dist/custom-elements.json', 'utf8'));
const { exports } = JSON.parse(readFileSync('package.json', 'utf8'));
const elements = modules.flatMap(({ declarations }) => declarations);

const sections = ['attributes', 'members', 'events', 'slots', 'cssParts', 'cssProperties'];
const names = (element, section) => (element[section] ?? []).map(({ name }) => name);

/** All of the source in a folder, as one text. */
const textOf = (folder) =>
  readdirSync(folder, { recursive: true })
    .map((file) => join(folder, file))
    .filter((path) => path.endsWith('.ts'))
    .map((path) => readFileSync(path, 'utf8'))
    .join('\n');

/** The source in an element's folder and in those that it shares with all elements, with all controls, with all sliders. */
function sourceOf({ tagName }) {
  const own = textOf(`src/components/${tagName.replace('rheolet-', '')}`);
  const shared = ['control', 'slider'].filter((name) => own.includes(`'../${name}/index.ts'`));
  return [own, ...['page', ...shared].map((name) => textOf(`src/components/${name}`))].join('\n');
}

const found = (text, pattern) => [
  ...new Set([...text.matchAll(pattern)].flatMap(([, list]) => list.split(/\s+/))),
];

test('every element that is shipped by itself is in the manifest', () => {
  const shipped = Object.keys(exports).flatMap((name) => /^\.\/(\w+)\.js$/.exec(name)?.[1] ?? []);
  assert.deepEqual(
    elements.map(({ tagName }) => tagName).sort(),
    shipped.map((name) => `rheolet-${name}`).sort(),
  );
});

for (const element of elements) {
  test(`everything public of ${element.tagName} is described`, (t) => {
    const items = sections.flatMap((section) => (element[section] ?? []).map((item) => [section, item]));
    t.diagnostic(`${items.length} items`);
    assert.ok(element.description, 'the element itself');
    for (const [section, { name, description }] of items)
      assert.ok(description, `${section}: ${name || 'the default'}`);
    for (const section of sections.filter((each) => each !== 'members'))
      // two accessors may have one name
      assert.deepEqual(
        names(element, section),
        [...new Set(names(element, section))],
        `${section}: each once`,
      );
  });

  test(`the parts, slots and custom properties in the source of ${element.tagName} are in its manifest`, () => {
    const source = sourceOf(element);
    const missing = (pattern, section) =>
      assert.deepEqual(
        found(source, pattern).filter((name) => !names(element, section).includes(name)),
        [],
        section,
      );
    missing(/\spart="([\w\s-]+)"/g, 'cssParts');
    missing(/<slot name="([\w-]+)"/g, 'slots');
    missing(/var\((--rheolet-[\w-]+)/g, 'cssProperties');
    missing(/['"](rheolet-(?:input|change|hold|problem))['"]/g, 'events');
  });
}

test('all elements together have at most thirty custom properties', (t) => {
  const properties = new Set(elements.flatMap((element) => names(element, 'cssProperties')));
  t.diagnostic(`${properties.size}: ${[...properties].join(', ')}`);
  assert.ok(properties.size <= 30);
});

test('the tables of docs/elements.md are those of the manifest (npm run docs)', async () => {
  const text = readFileSync('docs/elements.md', 'utf8');
  assert.equal(text, await withTables(text));
});
