import { test } from 'node:test';
import { soak } from './soak.ts';

// `npm run soak:drawings` draws five thousand.
test('a hundred random circuits of every form and kind, at any width and with either symbols, have no fault', () => {
  soak(100);
});
