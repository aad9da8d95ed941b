// From the compiler's modules in .tmp/build to what is shipped in dist: a module for each element with one chunk
// that they share, the loader that fetches them, the engine by itself, and everything in one classic script.
import { existsSync, readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import nodeResolve from '@rollup/plugin-node-resolve';
import { minify } from 'terser';
import { terserOptions } from './terser.config.mjs';

const build = '.tmp/build';
const define = (name) => `${build}/components/${name}/define.js`;
const names = readdirSync(`${build}/components`).filter((name) => existsSync(define(name)));
const all = `${build}/components/all.js`;

/** Lit's build for Node, which browsers run as well, wants stand-ins for two globals of a page: these are ours. */
const domStandIns = {
  name: 'dom-stand-ins',
  resolveId: (id) => (id === '@lit-labs/ssr-dom-shim' ? '\0dom-stand-ins' : null),
  load: (id) =>
    id === '\0dom-stand-ins'
      ? `export const HTMLElement = globalThis.HTMLElement ?? class {};
         export const customElements = globalThis.customElements ?? { get() {}, define() {} };`
      : null,
};

/** The classic script defines the tags and leaves no name behind: an entry without exports. */
const classicEntry = {
  name: 'classic-entry',
  resolveId: (id) => (id === 'classic' ? '\0classic' : null),
  load: (id) => (id === '\0classic' ? `import ${JSON.stringify(resolve(all))};` : null),
};

/** The loader knows by their names the files that stand beside it. */
const shippedFiles = {
  name: 'shipped-files',
  load: (id) =>
    id.endsWith('/loader/shipped.js')
      ? `export const names = ${JSON.stringify(names)};
         export function importFile(name) { return import(\`./\${name}.js\`); }`
      : null,
};

/** A second copy of Lit may not ask a strict page for its policy again: the copies of this package share one. */
const onePolicy = {
  name: 'one-policy',
  transform(code, id) {
    if (!id.endsWith('lit-html/node/lit-html.js')) return null;
    const shared = code.replace(
      /(\w+)(\.createPolicy\("lit-html",\{createHTML:\w+=>\w+\}\))/,
      '($1[Symbol.for("rheolet")]??=$1$2)',
    );
    if (shared === code) throw new Error('Lit makes its policy in another way now.');
    return { code: shared, map: null };
  },
};

/** Style sheets stand in templates, where the minifier leaves them as they are: their white space and comments go. */
const plainStyles = {
  name: 'plain-styles',
  transform(code, id) {
    if (!id.includes('/components/')) return null;
    const minified = code.replace(/(?<=\bcss ?`)[^`]*/g, (sheet) =>
      sheet
        .replace(/\/\*.*?\*\//gs, '')
        .replace(/\s+/g, ' ')
        .replace(/ ?([{};,]) ?|(?<=:) /g, '$1')
        .replaceAll(';}', '}'),
    );
    return { code: minified, map: null };
  },
};

/** In this process, which has compiled the minifier by its second file: a worker for each file would begin cold. */
const minified = {
  name: 'minified',
  renderChunk: async (code) => ({ code: (await minify(code, terserOptions)).code, map: null }),
};

/** When all is minified, only templates still have line breaks; a page shows them as a space. */
const plainTemplates = {
  name: 'plain-templates',
  renderChunk: (code) => ({ code: code.replace(/ *\n */g, ' '), map: null }),
};

/** A script is read in the encoding of its page or server: in ASCII it is the same in all. The minifier would leave tagged templates as they are. */
const ascii = {
  name: 'ascii',
  renderChunk: (code) => ({
    code: code.replace(
      /[\u0080-\uffff]/g,
      (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`,
    ),
    map: null,
  }),
};

/** What the shared chunk gives to others goes by the short name that it has inside: a second one for each would weigh. */
const oneName = {
  name: 'one-name',
  generateBundle(_, bundle) {
    const shared = bundle['chunks/shared.js'];
    const pairs = (list) => list.split(',').map((pair) => pair.split(' as '));
    const inside = new Map();
    shared.code = shared.code.replace(/(?<=export\{)[^}]*(?=\};?\s*$)/, (list) => {
      for (const [name, given = name] of pairs(list)) inside.set(given, name);
      return [...inside.values()].sort().join();
    });
    for (const chunk of Object.values(bundle)) {
      chunk.code = chunk.code.replace(/(?<=(?:im|ex)port\{)[^}]*(?=\}from"[./a-z]+\/shared\.js")/g, (list) =>
        pairs(list).map(([given, name = given]) => `${inside.get(given)} as ${name}`),
      );
    }
  },
};

const plugins = [
  domStandIns,
  onePolicy,
  plainStyles,
  nodeResolve({ exportConditions: ['node', 'production'] }),
  minified,
  plainTemplates,
  ascii,
];

/** What only some elements need: each a chunk of its own. */
const part = /\/(?:engine|components)\/(?:explain\/)?(reasons|whatif|kirchhoff|explain|mark|claims|csv)\//;

/** What graphs and level diagrams need and a board never does, though it stands beside what boards need. */
const diagrams =
  /\/(?:engine\/schematic\/levels|components\/axis\/(?:axis|decades)|components\/page\/room)\.js$/;

/** Lit, the engine, the board, which every page has, and whatever two elements need stand in one chunk, so that a page fetches few files. */
function chunkOf(id, { getModuleInfo }) {
  if (diagrams.test(id)) return undefined;
  const [, later] = part.exec(id) ?? [];
  if (later) return later;
  const elements = new Set();
  const seen = new Set();
  const walk = (module) => {
    if (seen.has(module)) return;
    seen.add(module);
    const info = getModuleInfo(module);
    if (info.isEntry && !module.endsWith('/all.js')) elements.add(module);
    else info.importers.forEach(walk);
  };
  walk(id);
  const everywhere = elements.size > 1 || (elements.has(resolve(define('board'))) && !elements.has(id));
  return everywhere ? 'shared' : undefined;
}

/** A circular import or an unresolved one is a mistake. */
function onwarn({ message }) {
  throw new Error(message);
}

export default [
  {
    input: `${build}/loader/index.js`,
    output: { file: 'dist/rheolet-lazy.js', format: 'es' },
    plugins: [shippedFiles, minified],
    onwarn,
  },
  {
    input: { rheolet: all, ...Object.fromEntries(names.map((name) => [name, define(name)])) },
    output: {
      dir: 'dist',
      format: 'es',
      entryFileNames: '[name].js',
      chunkFileNames: 'chunks/[name].js',
      manualChunks: chunkOf,
      onlyExplicitManualChunks: true,
    },
    plugins: [...plugins, oneName],
    onwarn,
  },
  {
    input: 'classic',
    output: { file: 'dist/rheolet.min.js', format: 'iife', inlineDynamicImports: true, freeze: false },
    plugins: [classicEntry, ...plugins],
    onwarn,
  },
  {
    input: `${build}/engine/index.js`,
    output: { file: 'dist/engine/index.js', format: 'es', inlineDynamicImports: true, freeze: false },
    plugins,
    onwarn,
  },
];
