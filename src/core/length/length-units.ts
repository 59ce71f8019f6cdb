/** How the maker writes lengths: inches or millimetres, and how fine the fractions go. */
export interface LengthUnits {
  readonly unit: 'in' | 'mm';
  /** Denominator of the finest fraction of an inch: 2, 4, 8, 16, 32 or 64. Plays no part in millimetres. */
  readonly nearest: number;
}
