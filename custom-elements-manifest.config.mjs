import { readFileSync } from 'node:fs';

/** The custom properties that every element has, described with the sheet that they share. */
const sheet = readFileSync('src/components/page/ink.ts', 'utf8');
const shared = [...sheet.matchAll(/@cssprop (--[\w-]+) - (.+)/g)].map(([, name, description]) => ({
  name,
  description,
}));

/** Of an element's class keeps what a page may use. */
function publicFace({ members = [], cssProperties = [], ...declaration }) {
  const isPublic = ({ name, kind, privacy = 'public', static: isStatic }) =>
    privacy === 'public' && (!isStatic || kind === 'method') && !name.startsWith('#');
  return {
    ...declaration,
    superclass: { name: 'LitElement', package: 'lit' },
    members: members.filter(isPublic),
    cssProperties: [...cssProperties, ...shared],
  };
}

/** A module for each element, under the name of the file that is shipped. */
function shipped(declaration) {
  const path = `dist/${declaration.tagName.replace('rheolet-', '')}.js`;
  const reference = { name: declaration.name, module: path };
  return {
    kind: 'javascript-module',
    path,
    declarations: [publicFace(declaration)],
    exports: [
      { kind: 'js', name: declaration.name, declaration: reference },
      { kind: 'custom-element-definition', name: declaration.tagName, declaration: reference },
    ],
  };
}

const elementsAsShipped = {
  name: 'elements-as-shipped',
  packageLinkPhase({ customElementsManifest }) {
    const declarations = customElementsManifest.modules.flatMap((module) => module.declarations);
    customElementsManifest.modules = declarations
      .filter(({ tagName }) => tagName)
      .sort((a, b) => (a.tagName < b.tagName ? -1 : 1)) // files are found in any order
      .map(shipped);
  },
};

export default {
  globs: ['src/components/*/*.ts'],
  outdir: 'dist',
  litelement: true,
  packagejson: false,
  plugins: [elementsAsShipped],
};
