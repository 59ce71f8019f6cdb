import { edgeSteps, faceSteps, markSteps } from './face-and-edge-steps.ts';
import type { MillingInput } from './milling-input.ts';
import { thinned } from './panel.ts';
import { restSteps } from './rough-steps.ts';
import type { StepDraft } from './step-draft.ts';
import { thicknessSteps } from './thickness-steps.ts';
import type { TargetedPiece } from './thickness-targets.ts';
import type { Ways } from './ways.ts';

/**
 * First milling of wood that loses much: flat on one face, over thickness on the other, then a rest.
 * Gives the steps, and all pieces as they come out of it.
 */
export function firstMilling(
  pieces: readonly TargetedPiece[],
  ways: Ways,
  input: MillingInput,
): { steps: StepDraft[]; pieces: TargetedPiece[] } {
  const twice = pieces.filter((piece) => piece.first !== null);
  const flattened = twice.map((piece) => thinned(piece, onceFlat(piece, input)));
  const planed = flattened.map((piece) => thinned(piece, piece.first ?? piece.final));
  const { practice } = input;
  const thick = twice.some((piece) => piece.need >= practice.thickMm.value);
  const wait = thick ? practice.restThickSeconds.value : practice.restSeconds.value;
  const after = new Map(planed.map((piece) => [piece.id, piece]));
  return {
    steps: [
      ...faceSteps('first flattening', twice, ways),
      ...thicknessSteps('first thickness', flattened, ways, (piece) => piece.first ?? piece.final),
      ...restSteps('rest', planed, wait, 'Rest before the last milling'),
    ],
    pieces: pieces.map((piece) => after.get(piece.id) ?? piece),
  };
}

/** Face, face mark, edge square to it, edge mark, the other face to thickness. */
export function lastMilling(
  pieces: readonly TargetedPiece[],
  ways: Ways,
  input: MillingInput,
): { steps: StepDraft[]; pieces: TargetedPiece[] } {
  const faced = pieces.map((piece) =>
    thinned(piece, piece.first === null ? onceFlat(piece, input) : flatAgain(piece, input)),
  );
  const half = input.shop.edgeAllowance / 2;
  const edged = faced.map((piece) => ({ ...piece, size: { ...piece.size, width: piece.size.width - half } }));
  return {
    steps: [
      ...faceSteps('face', pieces, ways),
      ...markSteps('mark face', faced),
      ...edgeSteps(faced, ways),
      ...markSteps('mark edge', edged),
      ...thicknessSteps('thickness', edged, ways, (piece) => piece.final),
    ],
    pieces: edged.map((piece) => thinned(piece, piece.final)),
  };
}

/** Solid wood left at the thinnest spot once the first face is flat: the warp is gone on that side, one cleaning too. */
const onceFlat = ({ reachable }: TargetedPiece, { shop }: MillingInput): number => reachable + shop.faceAllowance;

/** The second flattening takes half of what was left for it. */
const flatAgain = ({ final }: TargetedPiece, { practice }: MillingInput): number =>
  final + practice.secondMillingMm.value / 2;
