import type { Joint, Part } from '../../../src/store/records/piece.ts';

export function part(name: string, length: number, width: number, thickness: number, given: Partial<Part> = {}): Part {
  return { id: name, name, species: 'cherry-black', length, width, thickness, quantity: 1, panel: true, ...given };
}

export const lid = part('lid', 1060, 480, 22);
export const cleat = part('cleat', 430, 40, 25, { panel: false });
export const board = part('board', 900, 120, 22, { panel: false });
export const joint = (kind: string, ...parts: readonly Part[]): Joint => ({
  id: kind,
  kind,
  parts: parts.map(({ id }) => id),
});
export const seasons = { today: 8, dry: 6, wet: 11 };
