import type { Finish } from '../../store/records/finish.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { KeptStep } from './finish-steps.ts';

/** The finish or the piece that an address names: of a piece's finishes the one that runs, or else the last. */
export function findFinish(
  id: string,
  finishes: readonly Finish[],
  pieces: readonly Piece[],
): { finish?: Finish; piece?: Piece } {
  const named = finishes.find((finish) => finish.id === id);
  if (named) return { finish: named };
  const [newest] = finishes
    .filter(({ pieceId, steps: [first] }) => pieceId === id || ofStep(first).some((piece) => piece.id === id))
    .sort((a, b) => Number(a.finishedAt !== undefined) - Number(b.finishedAt !== undefined) || b.created - a.created);
  if (newest) return { finish: newest };
  const piece = pieces.find((one) => one.id === id);
  return piece ? { piece } : {};
}

/** The pieces that all steps of a finish are for. */
const ofStep = (step: unknown): KeptStep['pieces'] => (step as KeptStep | undefined)?.pieces ?? [];
