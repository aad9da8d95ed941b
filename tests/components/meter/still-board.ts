import type { BoardFace, Snapshot } from '../../../src/components/link/index.ts';
import { parseCircuit, solve, solveExact, usualCourse } from '../../../src/engine/index.ts';

/** A board that draws nothing: it gives its snapshot, tells of changes and remembers what stands out. */
export class StillBoard extends HTMLElement implements BoardFace {
  readonly listeners = new Set<() => void>();
  lit: readonly string[] = [];
  snapshot: Snapshot | undefined;

  subscribe(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Shows a circuit, read exactly at rest and in floating point while something moves. */
  show(line: string, more: Partial<Snapshot> = {}): void {
    const circuit = parseCircuit(line);
    const solution = solveExact(circuit);
    const readings = more.moving === undefined ? solution : solve(circuit);
    this.snapshot = {
      circuit,
      start: circuit,
      settings: {},
      solution,
      readings,
      course: usualCourse,
      covered: false,
      ...more,
    };
    for (const listener of this.listeners) listener();
  }

  set(): void {}
  move(): void {}
  light(ids: readonly string[]): void {
    this.lit = ids;
  }
}
