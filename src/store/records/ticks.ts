/** Progress through a step list: by step id, which pieces are through, and when the last one was. */
export interface Ticks {
  readonly [stepId: string]: { readonly pieces: readonly string[]; readonly skipped?: string; readonly at: number };
}
