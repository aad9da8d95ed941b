export { RheoletResistor } from './resistor.ts';
