import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { settingOf, withValue } from '../../../src/engine/index.ts';
import {
  moved,
  opened,
  redone,
  replaced,
  reset,
  settled,
  undone,
  type BoardState,
} from '../../../src/components/board/state.ts';
import { pump, quay } from './circuits.ts';

const setting = (state: BoardState, id: string): string | undefined =>
  state.circuit.components.map((each) => (each.id === id ? settingOf(each) : undefined)).find(Boolean);

const act = fc.oneof(
  fc.record({
    name: fc.constant('settle' as const),
    id: fc.constant('R1'),
    value: fc.integer({ min: 4, max: 40 }),
  }),
  fc.record({
    name: fc.constant('move' as const),
    id: fc.constant('R1'),
    value: fc.integer({ min: 4, max: 40 }),
  }),
  fc.record({ name: fc.constant('settle' as const), id: fc.constant('S1'), value: fc.boolean() }),
  fc.record({
    name: fc.constant('settle' as const),
    id: fc.constantFrom('R1', 'S1', 'L1', 'B1'),
    value: fc.constantFrom('broken', 'bridged', 'intact'),
  }),
  fc.record({ name: fc.constantFrom('undo' as const, 'redo' as const, 'reset' as const) }),
);

function perform(state: BoardState, step: typeof act extends fc.Arbitrary<infer T> ? T : never): BoardState {
  switch (step.name) {
    case 'settle':
      return settled(state, step.id, step.value);
    case 'move':
      return moved(state, step.id, step.value);
    case 'undo':
      return undone(state);
    case 'redo':
      return redone(state);
    case 'reset':
      return reset(state);
  }
}

describe('the state of a board', () => {
  it('starts as the page gave it, with nothing to undo', () => {
    const state = opened(quay());
    expect(state.settings).to.deep.equal({});
    expect(undone(state)).to.equal(state);
    expect(redone(state)).to.equal(state);
  });

  it('keeps the circuit of the page whatever is set', () => {
    const start = quay();
    const state = settled(opened(start), 'R1', '20');
    expect(state.start).to.equal(start);
    expect(setting(state, 'R1')).to.equal('20');
    expect(state.settings).to.deep.equal({ R1: '20' });
  });

  it('what moves is shown, but only what settles can be undone', () => {
    const moving = moved(moved(opened(quay()), 'R1', 13), 'R1', 14);
    expect(moving.moving).to.equal('R1');
    expect(setting(moving, 'R1')).to.equal('14');
    expect(moving.past).to.have.length(0);
    const rest = settled(moving, 'R1', 15);
    expect(rest.moving).to.equal(undefined);
    expect(setting(undone(rest), 'R1')).to.equal('12');
  });

  it('a movement that ends where it began is no change', () => {
    const state = settled(moved(opened(quay()), 'R1', 20), 'R1', 12);
    expect(state.moving).to.equal(undefined);
    expect(state.past).to.have.length(0);
  });

  it('undoing as often as something was done leads back to the start, redoing to the end', () => {
    fc.assert(
      fc.property(fc.array(act, { maxLength: 20 }), (steps) => {
        const end = steps.reduce(perform, opened(pump()));
        const rest = end.moving === undefined ? end : settled(end, 'R1', setting(end, 'R1') ?? '');
        let state = rest;
        while (state.past.length > 0) state = undone(state);
        expect(state.circuit).to.deep.equal(pump());
        while (state.future.length > 0) state = redone(state);
        rest.future.forEach(() => (state = undone(state)));
        expect(state.settings).to.deep.equal(rest.settings);
        expect(state.circuit).to.deep.equal(rest.circuit);
      }),
      { numRuns: 300 },
    );
  });

  it('is the start with its settings worked in, after any acts', () => {
    fc.assert(
      fc.property(fc.array(act, { maxLength: 20 }), (steps) => {
        const { start, circuit, settings, moving } = steps.reduce(perform, opened(pump()));
        fc.pre(moving === undefined);
        const again = Object.entries(settings).reduce(
          (each, [id, value]) => withValue(each, id, value),
          start,
        );
        expect(circuit).to.deep.equal(again);
      }),
      { numRuns: 300 },
    );
  });

  it('a reset can itself be undone', () => {
    const state = reset(settled(opened(pump()), 'S1', 'open'));
    expect(setting(state, 'S1')).to.equal('closed');
    expect(setting(undone(state), 'S1')).to.equal('open');
  });

  it('a new circuit keeps the settings whose id, kind and range fit', () => {
    const state = settled(settled(opened(pump()), 'R1', '20'), 'S1', 'open');
    expect(opened(quay(), state.settings).settings).to.deep.equal({ R1: '20' });
    expect(opened(quay(), { R1: '41', L1: '3', Q: '1' }).settings).to.deep.equal({});
  });

  it('settings can be replaced all at once', () => {
    const state = replaced(settled(opened(pump()), 'R1', '20'), { S1: 'open' });
    expect(state.settings).to.deep.equal({ S1: 'open' });
    expect(undone(state).settings).to.deep.equal({ R1: '20' });
  });

  it('what cannot be had is refused and changes nothing', () => {
    const state = opened(quay());
    for (const [id, value] of [
      ['R1', '41'],
      ['R1', 'twelve'],
      ['L1', '3'],
      ['R9', '1'],
    ] as const) {
      expect(() => settled(state, id, value), `${id} ${value}`).to.throw('');
      expect(() => moved(state, id, value), `${id} ${value}`).to.throw('');
    }
  });
});
