// Editors rewrite text: quotes, dashes, times signs, spaces, paragraphs and breaks. The circuit is the one that was meant.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { kept, scripts } from './lesson.mjs';
import { host } from './visit.mjs';

const site = host({ pages: { '/rewritten': kept('rewritten', { scripts: scripts('rheolet-lazy.js') }) } });

test('a circuit reads the same however an editor has left it', async () => {
  const visit = await site.open('/rewritten');
  await visit.until("document.querySelectorAll('rheolet-board').length === 7");
  await visit.settled();
  assert.deepEqual(await visit.problems(), []);
  const read = await visit.tab.$$eval('rheolet-board', (boards) =>
    boards.map(({ circuit, solution }) => {
      const ids = circuit.components.map(({ id }) => id);
      return `${ids.sort()}: ${solution.current('B1').toFraction()}`;
    }),
  );
  assert.deepEqual(read, Array(7).fill('B1,R1,R2,V1: 3/2')); // 6 V on 12 Ω beside 6 Ω, which is 4 Ω
  assert.deepEqual(visit.said, []);
});
