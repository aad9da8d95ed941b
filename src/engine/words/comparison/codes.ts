/** What is said of a reading and the held one. */
export interface ChangeData {
  /** What a reading has done since it was held: by how much, and to how many times that ('' where there is no ratio); `turned`: it has the other direction. */
  change: {
    readonly direction: 'rose' | 'fell' | 'same';
    readonly by: string;
    readonly ratio: string;
    readonly turned: boolean;
  };
  /** Less than the smallest step of a meter, or a reading held where there is none now. */
  'less than': { readonly text: string };
}
