export { RheoletSwitch } from './switch.ts';
