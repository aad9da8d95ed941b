import { register } from '../../../src/components/page/index.ts';
import { RheoletBoard } from '../../../src/components/board/index.ts';
import { RheoletMeter } from '../../../src/components/meter/index.ts';
import { RheoletResistor } from '../../../src/components/resistor/index.ts';
import { RheoletRules } from '../../../src/components/rules/index.ts';
import { RheoletValue } from '../../../src/components/value/index.ts';

const elements: Readonly<Record<string, CustomElementConstructor>> = {
  'rheolet-board': RheoletBoard,
  'rheolet-meter': RheoletMeter,
  'rheolet-resistor': RheoletResistor,
  'rheolet-rules': RheoletRules,
  'rheolet-value': RheoletValue,
};

/** Defines a tag of this page, once. */
function define(tag: string): void {
  const element = elements[tag];
  if (element) register(tag, element);
}

Object.assign(window, { define });
