import { useState } from 'preact/hooks';
import { offerUndo } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import type { Milling } from '../../store/records/milling.ts';
import { Pick } from '../../ui/fields.tsx';
import { howMany } from '../../ui/how-many.ts';
import { WithReason } from '../../ui/with-reason.tsx';
import { stripsOf } from './plan-progress.ts';
import { inputOfRun, stepsOfRun } from './steps-of-run.ts';
import { loseStrips } from './store-progress.ts';

/** A piece came to nothing: its strips are to be planned again around what is cut. */
export function SpoiltEntry({ run, step }: { run: Milling; step: MillingStep }) {
  const [pieceId, setPieceId] = useState('');
  const lost = run.lost ?? {};
  const strips = (id: string) => stripsOf(inputOfRun(run), stepsOfRun(run), id, lost);
  const good = step.pieces.filter(({ id }) => strips(id).length > 0);
  const piece = good.find(({ id }) => id === pieceId) ?? good[0];
  const count = Object.keys(lost).length;
  return (
    <>
      {count > 0 && (
        <div class="answer now">
          <p>{howMany(count, 'strip')} spoilt.</p>
          <a class="button" href={routeTo('breakdown', run.pieceId)}>
            Plan the rest
          </a>
        </div>
      )}
      {piece && (
        <WithReason
          label="A piece is spoilt"
          ask="What happened"
          action="It is spoilt"
          onReason={async (why) => {
            const own = strips(piece.id);
            await loseStrips(run, own, why);
            offerUndo(`${piece.label} is spoilt.`, () => loseStrips(run, own, undefined));
          }}
        >
          {good.length > 1 && (
            <Pick
              label="Which"
              value={piece.id}
              options={good.map(({ id, label }) => ({ value: id, label }))}
              onInput={setPieceId}
            />
          )}
        </WithReason>
      )}
    </>
  );
}
