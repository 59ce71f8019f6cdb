import { type FinishPart, type PartSurface, type Surface, surfaceMm2 } from '../../core/finishing/part-area.ts';
import type { Meeting, Part, Piece } from '../../store/records/piece.ts';

/** The two surfaces of each kind, in the core's names. */
const pairs = { faces: ['face1', 'face2'], edges: ['edge1', 'edge2'], ends: ['end1', 'end2'] } as const;

function surfacesOf(part: Part): Record<Surface, PartSurface> {
  const surfaces = {} as Record<Surface, PartSurface>;
  for (const kind of ['faces', 'edges', 'ends'] as const)
    for (const at of [0, 1] as const) surfaces[pairs[kind][at]] = { treatment: part.surfaces?.[kind]?.[at] ?? 'shown' };
  return surfaces;
}

/** Which pair of surfaces meets the other part; a mitre is cut where its grain says. */
const pairOf = ({ surface, grain }: Meeting) =>
  surface === 'mitre' ? (grain === 'along' ? pairs.edges : pairs.ends) : pairs[`${surface}s`];

/** A piece's parts as the core takes them: what is shown, inside or bare, and what joints hide. */
export function finishParts(piece: Piece): FinishPart[] {
  return piece.parts.map((part) => {
    const surfaces = surfacesOf(part);
    // One seam a piece, where the piece screen has the seam's length.
    for (const { parts, meets, length = 0, breadth } of piece.joints) {
      const at = parts.indexOf(part.id);
      const mine = meets?.[at];
      const other = piece.parts.find(({ id }) => id === parts[at === 0 ? 1 : 0]);
      if (!mine || !other) continue;
      // A face is covered by the thickness of what stands on it, unless the seam's breadth is known.
      const across = mine.surface === 'face' ? (breadth ?? other.thickness) : part.thickness;
      const pair = pairOf(mine);
      // Joints sit on the inside where a part has one.
      const surface = pair.find((one) => surfaces[one].treatment !== 'shown') ?? pair[0];
      const { treatment, joinedMm2 = 0 } = surfaces[surface];
      surfaces[surface] = { treatment, joinedMm2: Math.min(surfaceMm2(part, surface), joinedMm2 + length * across) };
    }
    const { name, length, width, thickness, quantity: count, species } = part;
    return { name, length, width, thickness, count, species, surfaces };
  });
}
