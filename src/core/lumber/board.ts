/**
 * Rough thickness of a board: by name in quarters of an inch (8 is 8/4; 2.5 is 5/8), or measured in mm.
 * `roughThickness` gives the mm of either.
 */
export type Thickness = { readonly quarters: number } | { readonly mm: number };

/** A rough board as it lies in the rack. Lengths in mm. */
export interface Board {
  readonly thickness: Thickness;
  /** Width; of a tapered board, at its near end. */
  readonly width: number;
  /** Width at the far end of a tapered board; the same as `width` when absent. */
  readonly farWidth?: number;
  readonly length: number;
}
