import { boards } from '../../store/boards.ts';
import { finishes } from '../../store/finishes.ts';
import { glueups } from '../../store/glueups.ts';
import { millings } from '../../store/millings.ts';
import { pieces } from '../../store/pieces.ts';
import { plans } from '../../store/plans.ts';
import type { Board } from '../../store/records/board.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Milling } from '../../store/records/milling.ts';
import { newest } from '../../store/records/newest.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { planInHand } from '../../store/records/plan-in-hand.ts';
import { findFinish } from '../finish/find-finish.ts';

/** What is stored about one piece, as far as its sheet shows it. */
export interface SheetRecords {
  readonly piece: Piece;
  readonly rack: readonly Board[];
  /** The plan that counts. */
  readonly plan: Plan | undefined;
  /** The run begun last. */
  readonly run: Milling | undefined;
  /** Of all pieces: the glue of the last one is taken for the next. */
  readonly glueups: readonly Glueup[];
  readonly finish: Finish | undefined;
}

export async function readSheet(id: string): Promise<Omit<SheetRecords, 'piece'> & { piece: Piece | undefined }> {
  const [piece, rack, ownPlans, runs, allGlueups, allFinishes] = await Promise.all([
    pieces.get(id),
    boards.all(),
    plans.where('pieceId', id),
    millings.where('pieceId', id),
    glueups.all(),
    finishes.all(),
  ]);
  return {
    piece,
    rack,
    plan: planInHand(ownPlans),
    run: newest(runs),
    glueups: allGlueups,
    finish: findFinish(id, allFinishes, []).finish,
  };
}
