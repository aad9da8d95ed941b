export * from './core.ts';
