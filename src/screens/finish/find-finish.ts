import type { Finish } from '../../store/records/finish.ts';
import type { Piece } from '../../store/records/piece.ts';
import { stepsOf } from './finish-steps.ts';

/** The finish or the piece that an address names: a piece's finish that runs comes before the plan of another. */
export function findFinish(
  id: string,
  finishes: readonly Finish[],
  pieces: readonly Piece[],
): { finish?: Finish; piece?: Piece } {
  const named = finishes.find((finish) => finish.id === id);
  if (named) return { finish: named };
  const running = finishes
    .filter(({ finishedAt }) => finishedAt === undefined)
    .filter((finish) => finish.pieceId === id || stepsOf(finish)[0]?.pieces.some((piece) => piece.id === id))
    .sort((a, b) => b.created - a.created)[0];
  if (running) return { finish: running };
  const piece = pieces.find((one) => one.id === id);
  return piece ? { piece } : {};
}
