/** One line of the bench table. */
export interface BenchRow {
  readonly what: string;
  readonly measured: string;
  readonly bar?: string;
  /** Whether the bar is kept; absent where there is none. */
  readonly holds?: boolean;
}

/** The value below which the share `part` of the values lies. */
export function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);
