import {
  hasCurve,
  isResistor,
  isSettable,
  isSurrounding,
  isTrack,
  resistanceOf,
  twinOf,
  type Circuit,
  type Track,
} from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { asResistor, meant, varied, type Varied } from './free.ts';
import { turned, type Turns } from './turn.ts';

/** The present value of what is varied. */
function valueOf(circuit: Circuit, what: Varied): Fraction {
  if (isSurrounding(what))
    throw new RangeError(`What follows the ${what} has no exact derivative; sweep shows how it goes.`);
  const component = meant(circuit, what);
  if (component.kind === 'supply' && what === component.id) return component.emf.value;
  if (component.kind === 'source') return component.current.value;
  const isFree = component.kind === 'supply' || isResistor(component) || !isSettable(component);
  const ohms = isFree && !hasCurve(component) && resistanceOf(component, circuit.surroundings);
  if (!ohms) throw new RangeError(`${what} has no value that could change.`);
  return ohms;
}

/** The part of a potentiometer that is varied, and the other one. */
const partsOf = ({ components }: Circuit, what: Varied): readonly Track[] =>
  components
    .filter(isTrack)
    .filter(({ id }) => id === what || twinOf(id) === what)
    .sort(({ id }) => (id === what ? -1 : 1));

/** What is varied: with a part of a potentiometer the other part the other way, each by itself, unless that one is taken out. */
export function turnsOf(circuit: Circuit, what: Varied): Turns {
  const own = valueOf(circuit, what);
  const parts = partsOf(circuit, what);
  const components = circuit.components.map((each) =>
    isTrack(each) && parts.includes(each) ? asResistor(each, each.resistance) : each,
  );
  const apart = { ...circuit, components };
  const others = parts.filter(({ id, condition }) => id !== what && condition !== 'broken');
  return [
    turned(apart, what, own),
    ...others.map(({ id, resistance }) => turned(apart, id, resistance.value, -1)),
  ];
}

/** So many lengths the way of a contact is divided into. */
const lengths = 16;

/** What is varied, with the contact of its potentiometer at other places between the ends of its way. */
export function turnsElsewhere(circuit: Circuit, what: Varied): readonly Turns[] {
  const [own, other] = partsOf(circuit, what);
  if (!own || !other) return [];
  const all = own.resistance.value.add(other.resistance.value);
  const [least, most] = [own.range?.min.value ?? 0, own.range?.max.value ?? all];
  const length = new Fraction(most).sub(least).div(lengths);
  return Array.from({ length: lengths - 1 }, (_, place) =>
    turnsOf(varied(circuit, what, length.mul(place + 1).add(least)), what),
  );
}
