import { type FinishPart, type Surface, surfacesMm2 } from '../../core/finishing/part-area.ts';
import type { Meeting, Piece } from '../../store/records/piece.ts';

/** Which surface meets the other part; a mitre is cut where its grain says. */
const surfaceOf = ({ surface, grain }: Meeting): Surface =>
  surface === 'mitre' ? (grain === 'along' ? 'edges' : 'ends') : `${surface}s`;

/** A piece's parts as the core takes them: with what joints hide. */
export function finishParts(piece: Piece): FinishPart[] {
  return piece.parts.map((part) => {
    const joined: Record<Surface, [number, number]> = { faces: [0, 0], edges: [0, 0], ends: [0, 0] };
    // One seam a piece, where the piece screen has the seam's length.
    for (const { parts, meets, length = 0, breadth } of piece.joints) {
      const at = parts.indexOf(part.id);
      const mine = meets?.[at];
      const other = piece.parts.find(({ id }) => id === parts[at === 0 ? 1 : 0]);
      if (!mine || !other) continue;
      // A face is covered by the thickness of what stands on it, unless the seam's breadth is known.
      const across = mine.surface === 'face' ? (breadth ?? other.thickness) : part.thickness;
      const kind = surfaceOf(mine);
      // Joints sit on the inside where a part has one.
      const [first = 'shown', second = 'shown'] = part.surfaces?.[kind] ?? [];
      const side = first === 'shown' && second !== 'shown' ? 1 : 0;
      joined[kind][side] = Math.min(surfacesMm2(part)[kind], joined[kind][side] + length * across);
    }
    return { ...part, count: part.quantity, joined };
  });
}
