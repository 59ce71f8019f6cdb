import { type FinishPart, type PartSurface, type Surface, surfaceMm2 } from '../../core/finishing/part-area.ts';
import type { Part, Piece, Side } from '../../store/records/piece.ts';

/** The two surfaces of each kind, in the core's names. */
const pairs = { faces: ['face1', 'face2'], edges: ['edge1', 'edge2'], ends: ['end1', 'end2'] } as const;

type Sides = Record<Surface, Side>;

function sidesOf({ surfaces }: Part): Sides {
  const sides = {} as Sides;
  for (const kind of ['faces', 'edges', 'ends'] as const)
    for (const at of [0, 1] as const) sides[pairs[kind][at]] = surfaces?.[kind]?.[at] ?? 'shown';
  return sides;
}

/** Which pair of surfaces meets the other part; a mitre is cut where its grain says. */
const pairOf = (surface: 'edge' | 'face' | 'end' | 'mitre', grain: 'along' | 'across') =>
  surface === 'mitre' ? (grain === 'along' ? pairs.edges : pairs.ends) : pairs[`${surface}s`];

/** What is hidden in joints, in mm2 for each surface of a part: one seam a piece where the piece screen has the seam's length. */
function joinedOf(piece: Piece, part: Part, sides: Sides): Partial<Record<Surface, number>> {
  const joined: Partial<Record<Surface, number>> = {};
  for (const { parts, meets, length = 0, breadth } of piece.joints) {
    const at = parts.indexOf(part.id);
    const mine = meets?.[at];
    const other = piece.parts.find(({ id }) => id === parts[at === 0 ? 1 : 0]);
    if (!mine || !other || at > 1) continue;
    // A face is covered by the thickness of what stands on it, unless the seam's breadth is known.
    const across = mine.surface === 'face' ? (breadth ?? other.thickness) : part.thickness;
    const pair = pairOf(mine.surface, mine.grain);
    // Joints sit on the inside where a part has one.
    const surface = [...pair].sort((a, b) => Number(sides[a] === 'shown') - Number(sides[b] === 'shown'))[0] ?? pair[0];
    joined[surface] = Math.min(surfaceMm2(part, surface), (joined[surface] ?? 0) + length * across);
  }
  return joined;
}

/** A piece's parts as the core takes them: what is shown, inside or bare, and what joints hide. */
export function finishParts(piece: Piece): FinishPart[] {
  return piece.parts.map((part) => {
    const sides = sidesOf(part);
    const joined = joinedOf(piece, part, sides);
    const surfaces: Partial<Record<Surface, PartSurface>> = {};
    for (const [surface, treatment] of Object.entries(sides) as [Surface, Side][])
      surfaces[surface] = { treatment, joinedMm2: joined[surface] ?? 0 };
    const { name, length, width, thickness, quantity: count, species } = part;
    return { name, length, width, thickness, count, species, surfaces };
  });
}
