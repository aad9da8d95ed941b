export { RheoletGraph } from './graph.ts';
