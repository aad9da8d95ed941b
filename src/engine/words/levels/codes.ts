/** What a level diagram says of itself. */
export interface LevelData {
  /** The name of a level diagram, and the head of its axis. */
  levels: Record<never, never>;
  potential: { readonly unit: string };
  /** Why there is no level diagram: nothing drives a current. */
  'no levels': Record<never, never>;
  /** The heads of a table of levels: the potential before a component, along the current, and after it. */
  'level head': { readonly of: 'before' | 'after' | 'change' };
  /** A component of a level diagram, with its change of potential along the current; heights with their units. */
  'level step': {
    readonly id: string;
    readonly step: 'lift' | 'drop' | 'none';
    readonly by: string;
    readonly from: string;
    readonly to: string;
  };
}
