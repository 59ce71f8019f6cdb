import { nextChalkMark } from '../../core/lumber/chalk-mark.ts';
import type { Part, Piece } from '../../store/records/piece.ts';

export const withPart = (piece: Piece, part: Part): Piece => ({ ...piece, parts: [...piece.parts, part] });

/** The piece with a copy of a part, as that is now, behind it; it goes by the next free name. */
export function withCopy(piece: Piece, partId: string, id: string): Piece {
  const at = piece.parts.findIndex((part) => part.id === partId);
  const part = piece.parts[at];
  if (!part) return piece;
  const name = nextName(
    part.name,
    piece.parts.map((other) => other.name),
  );
  return { ...piece, parts: piece.parts.toSpliced(at + 1, 0, { ...part, id, name }) };
}

export function changePart(piece: Piece, partId: string, change: Partial<Part>): Piece {
  return { ...piece, parts: piece.parts.map((part) => (part.id === partId ? { ...part, ...change } : part)) };
}

/** What some of a part's sides get; the others stay as they are now, whatever was on view when the choice was made. */
export function changeSides(piece: Piece, partId: string, sides: Part['surfaces']): Piece {
  const before = piece.parts.find(({ id }) => id === partId)?.surfaces;
  return changePart(piece, partId, { surfaces: { ...before, ...sides } });
}

/** The piece without a part, and without the joints it had. */
export function withoutPart(piece: Piece, partId: string): Piece {
  return {
    ...piece,
    parts: piece.parts.filter(({ id }) => id !== partId),
    joints: piece.joints.filter(({ parts }) => !parts.includes(partId)),
    stages: piece.stages.map((stage) => ({ ...stage, parts: stage.parts.filter((id) => id !== partId) })),
  };
}

/** Puts a part back where it was in `before`, with its joints and its place in the stages; all else stays as it is now. */
export function putBack(now: Piece, before: Piece, partId: string): Piece {
  const at = before.parts.findIndex(({ id }) => id === partId);
  const part = before.parts[at];
  if (!part || now.parts.some(({ id }) => id === partId)) return now;
  const inStages = new Set(before.stages.filter(({ parts }) => parts.includes(partId)).map(({ id }) => id));
  const known = new Set(now.joints.map(({ id }) => id));
  return {
    ...now,
    parts: now.parts.toSpliced(at, 0, part),
    joints: [...now.joints, ...before.joints.filter(({ id, parts }) => parts.includes(partId) && !known.has(id))],
    stages: now.stages.map((stage) => (inStages.has(stage.id) ? { ...stage, parts: [...stage.parts, partId] } : stage)),
  };
}

/** Counts a name up, as marks are: `side` gives `side 2`, `side 2` gives `side 3`, past names that are taken. */
export const nextName = (name: string, taken: readonly string[]): string =>
  nextChalkMark([...taken, / \d+$/.test(name) ? name : `${name} 1`]);
