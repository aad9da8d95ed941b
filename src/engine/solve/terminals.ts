import { isSupply, type Circuit, type Supply } from '../circuit/index.ts';
import { Fraction, quantity } from '../quantity/index.ts';

const one = new Fraction(1);

/** A network without a supply, with one of 1 V and 1 Ω inside put between its terminals, its id ''. Other circuits as they are. */
export function tested(circuit: Circuit): Circuit {
  if (!circuit.terminals) return circuit;
  const { terminals, ...network } = circuit;
  const [from, to] = terminals;
  const [emf, internalResistance] = [quantity(one, 'V'), quantity(one, 'Ω')];
  const supply: Supply = { id: '', kind: 'supply', from, to, emf, internalResistance };
  return { ...network, components: [...network.components, supply] };
}

/** What the one supply of a circuit drives, as a network between the supply's terminals. Undefined with several supplies, or none. */
export function outside(circuit: Circuit): Circuit | undefined {
  if (circuit.terminals) return circuit;
  const supplies = circuit.components.filter(isSupply);
  const [supply] = supplies;
  if (!supply || supplies.length > 1 || supply.condition === 'broken') return undefined;
  const components = circuit.components.filter((component) => component !== supply);
  return { ...circuit, components, terminals: [supply.from, supply.to] };
}
