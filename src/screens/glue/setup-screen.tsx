import { useLive } from '../../app/live.ts';
import { shop } from '../../app/shop.ts';
import { glueups } from '../../store/glueups.ts';
import { plans } from '../../store/plans.ts';
import { airNow } from '../../store/records/air-now.ts';
import type { Piece } from '../../store/records/piece.ts';
import { emptyForm, withAdhesive, withStage } from './glue-form.ts';
import { lastLabel } from './label-times.ts';
import { SetupForm } from './setup-form.tsx';
import { progressOf } from './stage-progress.ts';
import { planOf, stagesOfPiece } from './stages-of-piece.ts';

/** The next glue-up of a piece, or one of nothing listed: enough glue, time and clamps? */
export function SetupScreen({ piece }: { piece: Piece | undefined }) {
  const read = useLive(
    ['glueup', 'plan'],
    async () => ({ all: await glueups.all(), plan: piece && planOf(await plans.where('pieceId', piece.id)) }),
    piece?.id,
  );
  if (!read) return null;
  const { all, plan } = read;
  const stages = piece ? stagesOfPiece(piece, plan, shop.value) : [];
  const progress = progressOf(stages, piece ? all.filter(({ pieceId }) => pieceId === piece.id) : [], Date.now());
  const [next] = progress.now;
  const newest = [...all].sort((a, b) => b.created - a.created)[0];
  const empty = emptyForm(piece?.parts[0]?.species ?? '', airNow(shop.value, Date.now())?.celsius);
  const usual = newest ? withAdhesive(empty, newest.adhesive, lastLabel(all, newest.adhesive)) : empty;
  return (
    <SetupForm
      piece={piece}
      stages={stages}
      progress={progress}
      glueups={all}
      initial={next ? withStage(usual, next) : usual}
    />
  );
}
