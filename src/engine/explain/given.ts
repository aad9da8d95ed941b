import { hasCurve, resistanceOf, type Circuit } from '../circuit/index.ts';
import type { Fraction } from '../quantity/index.ts';
import { ratingsOf } from './rating.ts';

/** What the line of a circuit says and does not hide: resistances or what is marked in their place, e.m.f.s, internal resistances and constant currents; not what depends on the current. */
export function stated({ components, surroundings }: Circuit): ReadonlyMap<string, Fraction> {
  return new Map(
    components
      .filter((component) => !component.hidden && !hasCurve(component))
      .flatMap((component): readonly (readonly [string, Fraction])[] => {
        const resistance = resistanceOf(component, surroundings);
        const { id } = component;
        if (component.kind === 'supply')
          return [
            [`E_${id}`, component.emf.value],
            ...Object.entries({ [`r_${id}`]: component.internalResistance?.value }).flatMap(
              ([name, value]): [string, Fraction][] => (value ? [[name, value]] : []),
            ),
          ];
        if (component.kind === 'source')
          return component.condition === 'broken' ? [] : [[`I_${id}`, component.current.value]];
        const ratings = ratingsOf(component);
        if (!resistance) return [];
        return ratings.length > 0 ? ratings : [[`R_${id}`, resistance]];
      }),
  );
}
