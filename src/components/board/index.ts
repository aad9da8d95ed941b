export { RheoletBoard } from './board.ts';
