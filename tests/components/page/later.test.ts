import { expect } from '@open-wc/testing';
import { later } from '../../../src/components/page/index.ts';

describe('a part that comes later', () => {
  it('is what it is once it has come', async () => {
    const come = await later(Promise.resolve({ weighs: 2 }));
    expect(come).to.deep.equal({ weighs: 2 });
  });

  it('is nothing where it does not come, which the console is told, not the page', async () => {
    const told: unknown[] = [];
    const { warn } = console;
    console.warn = (...words: unknown[]): void => {
      told.push(words.join(' '));
    };
    const come: object | undefined = await later(Promise.reject<object>(new Error('no such file')));
    console.warn = warn;
    expect(come).to.equal(undefined);
    expect(told).to.deep.equal(['Rheolet: a part did not load. Error: no such file']);
  });
});
