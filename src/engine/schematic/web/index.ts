export { drawWeb } from './draw-web.ts';
