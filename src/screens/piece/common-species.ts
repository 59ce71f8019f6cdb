import type { Board } from '../../store/records/board.ts';
import type { Part } from '../../store/records/piece.ts';

/** Species worth listing first: the last part's, the other parts', then what is in the rack, the most boards first. */
export function commonSpecies(parts: readonly Part[], boards: readonly Board[]): string[] {
  const counts = new Map<string, number>();
  for (const { species } of boards) counts.set(species, (counts.get(species) ?? 0) + 1);
  const inRack = [...counts].sort((a, b) => b[1] - a[1]).map(([species]) => species);
  return [...new Set([...parts.map(({ species }) => species).reverse(), ...inRack])];
}
