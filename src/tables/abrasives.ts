import type { SourceId } from '../core/answer/source-id.ts';

export interface Grit {
  /** P number */
  readonly grit: number;
  readonly use: string;
  readonly source: SourceId;
}

/** Grits that a shop keeps for bare wood, coarse to fine, as fine as any finish asks for. */
export const grits: readonly Grit[] = [
  { grit: 60, use: 'glue and deep machine marks', source: 'common-practice' },
  { grit: 80, use: 'machine marks, tear-out', source: 'common-practice' },
  { grit: 100, use: 'light machine marks', source: 'common-practice' },
  { grit: 120, use: 'after planing', source: 'common-practice' },
  { grit: 150, use: 'under oil and paint', source: 'common-practice' },
  { grit: 180, use: 'under water-borne clear', source: 'common-practice' },
  { grit: 220, use: 'under varnish, lacquer, shellac', source: 'common-practice' },
];
