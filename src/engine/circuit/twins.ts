import { quantity, type Quantity } from '../quantity/index.ts';
import type { Said } from '../words/index.ts';
import { isContact, type Contact } from './changeover.ts';
import type { TwinData } from './codes.ts';
import type { Component, Range, Track } from './model.ts';
import { outside } from './outside.ts';
import { isTrack, mirrored, whole } from './potentiometer.ts';
import { twinOf } from './twin-of.ts';

/** A contact of a changeover switch, or a part of a potentiometer, and what is wrong with it and the other one. */
export interface WrongTwin {
  readonly id: string;
  readonly wrong: Said<keyof TwinData | 'out of range'>;
}

type Twin = Contact | Track;

const isTwin = (component: Component): component is Twin => isContact(component) || isTrack(component);

/** Whether a component is the second contact of a changeover switch, or the second part of a potentiometer, which its first one is turned with. */
export const isSecondTwin = (component: Component): boolean =>
  isTwin(component) && component.id.endsWith('b');

const same = (one: Quantity, other: Quantity): boolean => one.value.equals(other.value);

const alike = (one: Range, other: Range): boolean =>
  same(one.min, other.min) &&
  same(one.max, other.max) &&
  one.step?.value.equals(other.step?.value ?? 0) === true;

const wrong = (code: keyof TwinData, id: string, other: string): WrongTwin => ({
  id,
  wrong: { code, data: { id, other } },
});

/** What is wrong with two parts of a track that meet. */
function wrongTrack(one: Track, other: Track): WrongTwin | undefined {
  const all = whole(one, other);
  if (all.value.n === 0n) return wrong('track without resistance', one.id, other.id);
  for (const { id, range } of [one, other]) {
    if (range?.scale) return wrong('scale of a track', id, twinOf(id));
    if (range && range.max.value.compare(all.value) > 0)
      return { id, wrong: { code: 'out of range', data: outside(range.max, quantity(0, 'Ω'), all) } };
  }
  const rangesFit = !one.range || !other.range || alike(mirrored(one.range, all), other.range);
  const ratingsFit = !one.ratedPower || !other.ratedPower || same(one.ratedPower, other.ratedPower);
  return rangesFit && ratingsFit ? undefined : wrong('parts at odds', one.id, other.id);
}

/**
 * What does not make changeover switches and potentiometers: each contact, each part, has another one with an end in common; one of two
 * contacts is closed; two parts have a resistance, and a range that both can follow.
 */
export function wrongTwins(components: readonly Component[]): readonly WrongTwin[] {
  const twins = new Map(components.filter(isTwin).map((each) => [each.id, each]));
  return [...twins.values()].flatMap((one): WrongTwin | readonly WrongTwin[] => {
    const { id } = one;
    const other = twins.get(twinOf(id));
    if (other?.kind !== one.kind)
      return wrong(isTrack(one) ? 'part missing' : 'contact missing', id, twinOf(id));
    if (id > other.id) return [];
    const meet = [one.from, one.to].some((node) => node === other.from || node === other.to);
    if (!meet) return wrong(isTrack(one) ? 'parts apart' : 'contacts apart', id, other.id);
    if (isTrack(one) && isTrack(other)) return wrongTrack(one, other) ?? [];
    const isAlike = isContact(one) && isContact(other) && one.closed === other.closed;
    return isAlike ? wrong('contacts alike', id, other.id) : [];
  });
}

/** The components with what one part of a potentiometer states for both: how far the contact slides, and the power of the whole. */
export function matched(components: readonly Component[]): readonly Component[] {
  if (!components.some(isTrack)) return components;
  const tracks = new Map(components.filter(isTrack).map((each) => [each.id, each]));
  return components.map((each) => {
    const other = isTrack(each) ? tracks.get(twinOf(each.id)) : undefined;
    if (!isTrack(each) || !other) return each;
    const range = each.range ?? (other.range && mirrored(other.range, whole(each, other)));
    const ratedPower = each.ratedPower ?? other.ratedPower;
    return { ...each, ...(range && { range }), ...(ratedPower && { ratedPower }) };
  });
}
