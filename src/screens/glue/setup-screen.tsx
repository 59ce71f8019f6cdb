import { useLive } from '../../app/live.ts';
import { shop } from '../../app/shop.ts';
import { glueups } from '../../store/glueups.ts';
import { millings } from '../../store/millings.ts';
import { plans } from '../../store/plans.ts';
import { airNow } from '../../store/records/air-now.ts';
import { newest } from '../../store/records/newest.ts';
import type { Piece } from '../../store/records/piece.ts';
import { planInHand } from '../../store/records/plan-in-hand.ts';
import { emptyForm } from './glue-form.ts';
import { usualGlue } from './plan-stage.ts';
import { SetupForm } from './setup-form.tsx';
import { progressOf } from './stage-progress.ts';
import { stagesOfPiece } from './stages-of-piece.ts';

/** The next glue-up of a piece, or one of nothing listed: enough glue, time and clamps? */
export function SetupScreen({ piece }: { piece: Piece | undefined }) {
  const read = useLive(
    ['glueup', 'plan', 'milling'],
    async () => ({
      all: await glueups.all(),
      plan: piece && planInHand(await plans.where('pieceId', piece.id)),
      run: piece && newest(await millings.where('pieceId', piece.id)),
    }),
    piece?.id,
  );
  if (!read) return null;
  const { all, plan, run } = read;
  const stages = piece ? stagesOfPiece(piece, plan, shop.value) : [];
  const own = piece ? all.filter(({ pieceId }) => pieceId === piece.id) : [];
  const progress = progressOf(stages, own, Date.now(), run);
  const glue = usualGlue(all, airNow(shop.value, Date.now())?.celsius);
  const usual = emptyForm(piece?.parts[0]?.species ?? '', glue);
  return <SetupForm piece={piece} stages={stages} progress={progress} glueups={all} usual={usual} />;
}
