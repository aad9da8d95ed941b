import { defineConfig } from 'eslint/config';
import lit from 'eslint-plugin-lit';
import wc from 'eslint-plugin-wc';
import tseslint from 'typescript-eslint';
import { docstring } from './tests/lint/docstring.mjs';
import { layers } from './tests/lint/layers.mjs';

/** What the engine does without: the page, the clock, chance and the console. */
const outside = [
  ...[
    'window',
    'document',
    'navigator',
    'location',
    'history',
    'screen',
    'self',
    'globalThis',
    'customElements',
  ],
  ...['HTMLElement', 'Element', 'Node', 'Event', 'CustomEvent', 'EventTarget', 'DOMParser', 'CSSStyleSheet'],
  ...[
    'localStorage',
    'sessionStorage',
    'indexedDB',
    'fetch',
    'XMLHttpRequest',
    'Worker',
    'process',
    'Buffer',
  ],
  ...['setTimeout', 'setInterval', 'requestAnimationFrame', 'requestIdleCallback', 'queueMicrotask'],
  ...['Date', 'performance', 'crypto', 'console'],
];

/** A strict page refuses these, and so do we. */
const strictPolicy = [
  {
    selector:
      'TaggedTemplateExpression[tag.name=/^(html|svg)$/] TemplateElement[value.raw=/\\sstyle\\s*=|<style/i]',
    message:
      'A style in a template breaks a strict content policy: use a class and the sheet of the element.',
  },
  {
    selector:
      'MemberExpression[property.name=/^(innerHTML|outerHTML|insertAdjacentHTML|setHTMLUnsafe|srcdoc)$/]',
    message: 'Build with Lit or DOM calls: trusted types refuse HTML from text.',
  },
  {
    selector: 'CallExpression[callee.property.name="setAttribute"][arguments.0.value="style"]',
    message: 'A style attribute breaks a strict content policy.',
  },
];
const unsafeDirectives = ['style-map', 'unsafe-html', 'unsafe-svg', 'unsafe-mathml'].map((name) => ({
  name: `lit/directives/${name}.js`,
  message: 'It breaks a strict content policy.',
}));

export default defineConfig(
  { ignores: ['dist/', '.tmp/', 'coverage/'] },
  { linterOptions: { noInlineConfig: true, reportUnusedInlineConfigs: 'error' } },
  {
    files: ['**/*.mjs'],
    extends: [tseslint.configs.recommended],
    rules: { eqeqeq: 'error', 'prefer-const': 'error' },
  },
  {
    files: ['**/*.ts'],
    extends: [
      tseslint.configs.strictTypeChecked,
      tseslint.configs.stylisticTypeChecked,
      lit.configs['flat/recommended'],
      wc.configs['flat/best-practice'],
    ],
    languageOptions: { parserOptions: { project: './tsconfig.json', tsconfigRootDir: import.meta.dirname } },
    rules: {
      eqeqeq: 'error',
      'prefer-const': 'error',
      'no-restricted-syntax': ['error', ...strictPolicy],
      'no-restricted-imports': ['error', { paths: unsafeDirectives }],
      '@typescript-eslint/no-generated-empty-object-type': 'off', // a sentence that needs no data
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
    },
  },
  {
    files: ['src/**/*.ts'],
    plugins: { rheolet: { rules: { layers, docstring } } },
    rules: { 'rheolet/layers': 'error', 'rheolet/docstring': 'error', 'no-console': 'error' },
  },
  {
    // one line: two versions, a file that does not load
    files: ['src/components/page/register.ts', 'src/components/page/later.ts', 'src/loader/loader.ts'],
    rules: { 'no-console': ['error', { allow: ['warn'] }] },
  },
  {
    files: ['src/engine/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...outside],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'A seed is passed in.' },
      ],
    },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unused-expressions': 'off', // chai's `expect(x).to.be.true`
      '@typescript-eslint/no-empty-function': 'off', // a stand-in that does nothing
      '@typescript-eslint/no-floating-promises': [
        'error',
        {
          allowForKnownSafeCalls: [
            'Equal', // the type of chai's `equal`, which is declared to give a promise
            { from: 'package', name: ['it', 'test', 'describe', 'suite'], package: 'node:test' },
          ],
        },
      ],
    },
  },
);
