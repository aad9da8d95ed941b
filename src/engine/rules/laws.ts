import { isResistor } from '../circuit/index.ts';
import { junctions, loops } from '../topology/index.ts';
import { telling, type Block } from './block.ts';
import { balance, flipped, magnitudes } from './equation.ts';
import { found, takenOut, type Found } from './found.ts';
import type { Survey } from './survey.ts';

const isSupply = ({ supplies }: Block): boolean => supplies.length > 0;
const joins = ({ voltage }: Block): boolean => voltage.length === 0;

/**
 * The junction law, Kirchhoff's first: as much current flows in as out. Of two junctions that say the same because their
 * branches are the same, the one where more of the branches show their ammeters.
 */
export function junctionLaw(survey: Survey): readonly Found[] {
  const { live, blocks } = survey;
  const told = new Map<string, string>();
  for (const { tree, parts } of blocks) {
    const best = tree.kind === 'series' && telling(parts)?.first;
    if (best) for (const part of parts) told.set(part.first, best);
  }
  const best = (ids: readonly string[]): readonly string[] => ids.map((id) => told.get(id) ?? id);
  const shown = (ids: readonly string[]): number => best(ids).filter((id) => ids.includes(id)).length;
  const places = junctions({ components: live }).map(({ ends, node }) => {
    const steps = ends.map(({ id, end }) =>
      survey.step({ kind: 'component', id, reversed: end === 'to', from: node, to: node }),
    );
    const about = ends.map(({ id }) => id);
    return { steps, shown: shown(about), key: best(about).toSorted().join() };
  });
  const plain = new Map(places.toSorted((a, b) => a.shown - b.shown).map((place) => [place.key, place]));
  return places
    .filter((place) => plain.get(place.key) === place)
    .map(({ steps }) =>
      found(
        'one junction',
        steps,
        balance(
          [],
          steps.flatMap(({ current }) => current),
        ),
      ),
    );
}

/** The loop law, Kirchhoff's second: round a loop, what the supplies lift the others drop. */
export const loopLaw = (survey: Survey): readonly Found[] =>
  loops({ components: survey.live }).flatMap((loop) => {
    const steps = loop.map((step) => survey.step(step));
    const over = (some: readonly Block[]) => some.flatMap(({ voltage }) => voltage);
    const rises = flipped(over(steps.filter(isSupply)));
    const drops = over(steps.filter((step) => !isSupply(step)));
    return rises.length + drops.length > 1 ? found('closed loop', steps, balance(rises, drops)) : [];
  });

/** The live components one by one, each along itself. */
const steps = (survey: Survey): readonly Block[] =>
  survey.live.map(({ id, from, to }) => survey.step({ kind: 'component', id, reversed: false, from, to }));

/** V = IR for whatever has a resistance; not for a supply, nor for a resistance that is taken out. */
export const ohmsLaw = (survey: Survey): readonly Found[] => {
  const all = steps(survey);
  const some = all.filter((step) => !isSupply(step) && !joins(step));
  const out = survey.broken.filter((each) => isResistor(each) || each.kind === 'lamp');
  return [
    ...some.map((step) =>
      found('resists', [step], {
        form: 'product',
        relation: 'equal',
        sides: [magnitudes(step.voltage), [...magnitudes(step.current), step.resistance]],
      }),
    ),
    ...all
      .filter(isSupply)
      .slice(0, 1)
      .map((step) => found('not resistance', [step])),
    ...(out.length > 0 ? [takenOut(out)] : []),
  ];
};

/** The balance of power: what the supplies give, the others take. */
export function powerBalance(survey: Survey): readonly Found[] {
  const all = steps(survey).filter((step) => !joins(step));
  const power = (some: readonly Block[]) =>
    some.flatMap(({ component }) => (component ? survey.read('P', component) : []));
  const taken = all.filter((step) => !isSupply(step));
  if (all.length < 2) return [];
  return [found('energy is kept', all, balance(power(all.filter(isSupply)), power(taken)))];
}
