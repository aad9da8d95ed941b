import { dirname, relative, resolve } from 'node:path';

/** What each folder of the engine may import; imports point down only. */
const below = {
  quantity: [],
  words: [],
  reasons: ['words'],
  circuit: ['quantity', 'words'],
  topology: ['circuit', 'quantity', 'words'],
  notation: ['topology', 'circuit', 'quantity', 'words'],
  solve: ['circuit', 'quantity', 'words'],
  rules: ['topology', 'solve', 'circuit', 'quantity', 'words'],
  schematic: ['topology', 'circuit', 'quantity', 'words'],
  nonlinear: ['solve', 'circuit', 'quantity', 'words'],
  sparse: ['solve', 'circuit', 'quantity', 'words'],
  time: ['solve', 'circuit'],
  whatif: ['reasons', 'topology', 'solve', 'circuit', 'quantity', 'words'],
  explain: ['reasons', 'rules', 'notation', 'topology', 'solve', 'circuit', 'quantity', 'words'],
  mark: ['reasons', 'quantity'],
  reduction: ['explain', 'topology', 'circuit', 'quantity'],
  comparison: ['schematic', 'solve', 'quantity'],
  picture: ['schematic'],
  claims: ['reasons', 'whatif', 'rules', 'topology', 'solve', 'circuit', 'quantity', 'words'],
};

/** The parts of the engine that no page pays for before it uses them: an element imports each by itself. */
const later = [
  'nonlinear',
  'sparse',
  'time',
  'reasons',
  'whatif',
  'explain',
  'mark',
  'claims',
  'comparison',
  'reduction',
  'picture',
];

/** The packages that a layer may import. */
const packages = { quantity: /^fraction\.js$/, components: /^lit(\/.+)?$/ };

/** Where a path under src stands: its layer, its folder (`engine/solve`, `components/board`) and the rest. */
function place(path) {
  const [layer, name, ...rest] = path.split('/');
  return rest.length > 0
    ? { layer, name, folder: `${layer}/${name}`, file: rest.join('/') }
    : { layer, name: layer, folder: layer, file: name };
}

/** Why a file of src may not import what it does; undefined if it may. */
function objection(from, to, isType, isLater) {
  if (from.folder === to.folder) return undefined;
  // What defines a tag defines those that it is made of; an element may fetch another that it makes.
  const fetches = isLater && from.layer === 'components';
  const defines = from.folder === 'components' || from.file === 'define.ts' || fetches;
  // What of a layer is loaded later has a face of its own, for the engine's.
  const own =
    from.folder === 'engine'
      ? /^((web|fork|quantities|wiper|kirchhoff|format|levels|activity|written|comparison|because)\/)?index\.ts$/
      : /^index\.ts$/;
  const face = defines ? /^(index|define)\.ts$/ : own;
  const faces = to.folder === 'engine' ? /^(index|core)\.ts$/ : face;
  // What writes notation is fetched by who copies a circuit as text.
  if (fetches && to.folder === 'engine/notation' && to.file === 'format/index.ts') return undefined;
  // What only one element says is imported by that element.
  if (from.layer === 'components' && to.file === `${from.name}/index.ts` && to.folder === 'engine/words')
    return undefined;
  if (!faces.test(to.file)) return 'Another folder is imported through its index.ts.';
  if (from.layer === 'components') {
    const isCore = to.folder === 'engine' && to.file === 'core.ts';
    const isApart = to.layer === 'engine' && later.includes(to.name);
    const may = to.layer === 'components' || isCore || isApart;
    return may ? undefined : 'An element imports the engine through src/engine/core.ts.';
  }
  if (from.layer === 'loader') return 'The loader is there before everything else: it imports nothing.';
  if (to.layer !== 'engine' || to.folder === 'engine') return 'The engine imports only what lies below.';
  if (from.name === 'engine') return undefined;
  if (from.name === 'words') return isType ? undefined : 'Words import nothing but types.';
  if (from.name === 'reasons' && isType) return undefined;
  return below[from.name]?.includes(to.name) ? undefined : `${from.name} does not stand above ${to.name}.`;
}

/** The lint rule: the folders of src import each other downwards only, and through their faces. */
export const layers = {
  meta: { type: 'problem', schema: [], messages: { layer: '{{ why }}' } },
  create(context) {
    const src = resolve(context.cwd, 'src');
    const from = place(relative(src, context.filename));

    function check(node, source, isType, isLater = false) {
      const path = source.value;
      let why;
      if (path.startsWith('.')) {
        const target = relative(src, resolve(dirname(context.filename), path));
        why = target.startsWith('..')
          ? 'src imports nothing outside src.'
          : objection(from, place(target), isType, isLater);
      } else {
        const allowed = packages[from.layer === 'components' ? from.layer : from.name];
        if (!allowed?.test(path)) why = `${from.folder} may not import the package ${path}.`;
      }
      if (why) context.report({ node, messageId: 'layer', data: { why } });
    }

    return {
      ImportDeclaration: (node) => check(node, node.source, node.importKind === 'type'),
      ExportAllDeclaration: (node) => check(node, node.source, node.exportKind === 'type'),
      ExportNamedDeclaration: (node) => node.source && check(node, node.source, node.exportKind === 'type'),
      ImportExpression: (node) => node.source.type === 'Literal' && check(node, node.source, false, true),
    };
  },
};
