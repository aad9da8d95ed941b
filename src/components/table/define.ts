import { register } from '../page/index.ts';
import { RheoletTable } from './table.ts';

register('rheolet-table', RheoletTable);
