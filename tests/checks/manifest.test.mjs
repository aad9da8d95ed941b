// Whatever a page may use of an element is described in the manifest, and nothing is missing from it.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { undescribed, unlisted } from '../run/element-gaps.mjs';
import { withTables } from '../run/element-tables.mjs';

const { modules } = JSON.parse(readFileSync('dist/custom-elements.json', 'utf8'));
const { exports } = JSON.parse(readFileSync('package.json', 'utf8'));
const elements = modules.flatMap(({ declarations }) => declarations);

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

test('every element that is shipped by itself is in the manifest', () => {
  const shipped = Object.keys(exports).flatMap((name) => /^\.\/(\w+)\.js$/.exec(name)?.[1] ?? []);
  assert.deepEqual(
    elements.map(({ tagName }) => tagName).sort(),
    shipped.map((name) => `rheolet-${name}`).sort(),
  );
});

for (const element of elements) {
  test(`everything public of ${element.tagName} is described, once`, () => {
    assert.deepEqual(undescribed(element), []);
  });

  test(`the parts, slots, events and custom properties in the source of ${element.tagName} are in its manifest`, () => {
    assert.deepEqual(unlisted(element, sourceOf(element)), []);
  });
}

test('of an element without a word about it every public thing is found', () => {
  const source = `
    /** @tag rheolet-bare
      * @fires rheolet-told
      * @slot told
      * @csspart told
      * @cssprop --rheolet-told
      */
    export class RheoletBare extends LitElement {
      static override properties: PropertyDeclarations = { of: { type: String } };
      declare of: string;
      reading = 0;
      read(): void {
        fire(this, 'rheolet-untold', {});
      }
      override render(): TemplateResult {
        return html\`<p part="untold"><slot name="untold"></slot></p>\`;
      }
      static override styles: CSSResult = css\`p { color: var(--rheolet-untold) }\`;
    }`;
  mkdirSync('.tmp/bare', { recursive: true });
  writeFileSync('.tmp/bare/bare.ts', source);
  const analyse = ['analyze', '--globs', '.tmp/bare/bare.ts', '--outdir', '.tmp/bare', '--quiet'];
  execFileSync('node_modules/.bin/cem', analyse);
  const { modules } = JSON.parse(readFileSync('.tmp/bare/custom-elements.json', 'utf8'));
  const bare = modules.flatMap(({ declarations }) => declarations).find(({ name }) => name === 'RheoletBare');
  assert.deepEqual(undescribed(bare).sort(), [
    'attributes: of',
    'cssParts: told',
    'cssProperties: --rheolet-told',
    'events: rheolet-told',
    'members: of',
    'members: read',
    'members: reading',
    'slots: told',
    'the element itself',
  ]);
  assert.deepEqual(unlisted(bare, source).sort(), [
    'cssParts: untold',
    'cssProperties: --rheolet-untold',
    'events: rheolet-untold',
    'slots: untold',
  ]);
});

test('the gallery has every attribute of every element, in a line to paste', () => {
  const gallery = readFileSync('demo/gallery.html', 'utf8');
  for (const { tagName, attributes = [] } of elements) {
    const lines = [...gallery.matchAll(new RegExp(`<${tagName}\\b[^>]*`, 'g'))].join('\n');
    const shown = (name) => new RegExp(`\\s${name}(?=[\\s=>]|$)`, 'm').test(lines);
    const missing = attributes
      .map(({ name }) => name)
      .filter((name) => name !== 'aria-label' && !shown(name));
    assert.deepEqual(missing, [], tagName);
  }
});

test('all elements together have at most thirty custom properties', (t) => {
  const properties = new Set(
    elements.flatMap(({ cssProperties = [] }) => cssProperties.map(({ name }) => name)),
  );
  t.diagnostic(`${properties.size}: ${[...properties].join(', ')}`);
  assert.ok(properties.size <= 30);
});

test('the tables of docs/elements.md are those of the manifest (npm run docs)', async () => {
  const text = readFileSync('docs/elements.md', 'utf8');
  assert.equal(text, await withTables(text));
});
