export { RheoletMeter } from './meter.ts';
