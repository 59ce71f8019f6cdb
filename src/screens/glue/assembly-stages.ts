import { sumOf } from '../../core/answer/sum-of.ts';
import type { Seam } from '../../core/gluing/seam.ts';
import type { Joint, Part, Piece, Stage } from '../../store/records/piece.ts';
import { jointKind } from '../movement/joint-kinds.ts';
import type { PieceStage } from './stages-of-piece.ts';

/** Joints that let the wood move: screwed, pegged or loose in their groove, and never glued along. */
const floating = new Set(['cleat', 'top', 'breadboard', 'groove']);

const partsOf = (piece: Piece, ids: readonly string[]): Part[] =>
  ids.flatMap((id) => piece.parts.find((part) => part.id === id) ?? []);

/** The seams of one joint, everywhere it occurs: two fronts and two ends meet at four corners. */
function seamsOf(piece: Piece, joint: Joint): Seam[] {
  const parts = partsOf(piece, joint.parts);
  const [first, ...others] = parts;
  if (!first || others.length === 0) return [];
  // A part has two ends, and each of them goes into one other.
  const meets = joint.meets ?? jointKind(joint.kind)?.meets;
  const ends = parts.map(({ quantity }, at) =>
    meets?.[at]?.surface === 'end' ? 2 * quantity : Number.POSITIVE_INFINITY,
  );
  const everywhere = Math.min(first.quantity * sumOf(others, ({ quantity }) => quantity), ...ends);
  // Corners that are listed one by one share the places at which these parts meet.
  const among = (ids: readonly string[]) => [...ids].sort().join();
  const alike = piece.joints.filter((one) => one.kind === joint.kind && among(one.parts) === among(joint.parts));
  const times = Math.max(1, Math.round(everywhere / alike.length));
  const seam = {
    length: joint.length ?? Math.min(...parts.map(({ width }) => width)),
    width: joint.breadth ?? Math.min(...parts.map(({ thickness }) => thickness)),
  };
  return Array.from({ length: Math.min(times, 100) }, () => seam);
}

/** The maker's own stages, or else one with all that is jointed. */
function listed({ stages, joints }: Piece, glued: readonly Joint[]): readonly Stage[] {
  if (stages.length > 0) return stages;
  const parts = [...new Set((glued.length > 0 ? joints : []).flatMap((joint) => joint.parts))];
  return parts.length > 0 ? [{ id: 'assembly', name: 'Assembly', parts }] : [];
}

/**
 * What is put together from solid parts and finished panels. Each waits for the panels in it, and for earlier stages that
 * share a part with it. A stage without a glued joint of its own is none: its panels are glued by themselves.
 */
export function assemblyStages(piece: Piece, panels: readonly PieceStage[]): PieceStage[] {
  const glued = piece.joints.filter(({ kind }) => !floating.has(kind));
  const placed: { readonly id: string; readonly parts: readonly string[] }[] = [];
  const stages = listed(piece, glued);
  return stages.flatMap((stage) => {
    // A list of panels may hold both sides of a corner that is glued much later: the last stage with both has it.
    const own = glued.filter(
      ({ parts }) => stages.findLast((one) => parts.every((part) => one.parts.includes(part))) === stage,
    );
    const seams = own.flatMap((joint) => seamsOf(piece, joint));
    if (seams.length === 0) return [];
    const needs = [
      ...panels.filter(({ id }) => stage.parts.some((part) => id.startsWith(`${part}/`))).map(({ id }) => id),
      ...placed.filter(({ parts }) => parts.some((part) => stage.parts.includes(part))).map(({ id }) => id),
    ];
    placed.push(stage);
    const [part] = partsOf(piece, stage.parts);
    return [
      {
        id: stage.id,
        name: stage.name,
        needs,
        seams,
        meets: own.some(({ kind }) => kind === 'mitre') ? 'mitre-case' : 'other',
        species: part?.species ?? '',
        guessed: false,
      },
    ];
  });
}
