import type { StepPiece } from './milling-step.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import type { TargetedPiece } from './thickness-targets.ts';
import type { Way } from './ways.ts';

export const plainPiece = ({ id, label, size }: TargetedPiece): StepPiece => ({ id, label, size });

/** Drafts per way, for the pieces that have one. */
export function byWay(
  pieces: readonly TargetedPiece[],
  wayOf: (piece: TargetedPiece) => Way | null,
  draft: (way: Way, group: readonly TargetedPiece[]) => StepDraft,
): StepDraft[] {
  const able = pieces.flatMap((piece) => {
    const way = wayOf(piece);
    return way ? [{ piece, way }] : [];
  });
  return grouped(able, ({ way }) => wayKey(way)).map((group) =>
    draft(
      (group[0] as (typeof group)[number]).way,
      group.map(({ piece }) => piece),
    ),
  );
}
