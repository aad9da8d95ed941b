import { register } from '../page/index.ts';
import { RheoletGraph } from './graph.ts';

register('rheolet-graph', RheoletGraph);
