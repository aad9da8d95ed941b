export { RheoletSteps } from './steps.ts';
