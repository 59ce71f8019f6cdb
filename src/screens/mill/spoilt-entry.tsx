import { useState } from 'preact/hooks';
import { offerUndo } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import type { Milling } from '../../store/records/milling.ts';
import { Pick, TextField } from '../../ui/fields.tsx';
import { stripsOf } from './plan-progress.ts';
import { inputOfRun, stepsOfRun } from './steps-of-run.ts';
import { loseStrips } from './store-progress.ts';

/** A piece came to nothing: its strips are to be planned again around what is cut. */
export function SpoiltEntry({ run, step }: { run: Milling; step: MillingStep }) {
  const [pieceId, setPieceId] = useState('');
  const [why, setWhy] = useState('');
  const lost = run.lost ?? {};
  const strips = (id: string) => stripsOf(inputOfRun(run), stepsOfRun(run), id);
  const good = step.pieces.filter(({ id }) => strips(id).some((strip) => lost[strip] === undefined));
  const piece = good.find(({ id }) => id === pieceId) ?? good[0];
  const spoil = async () => {
    if (!piece) return;
    const own = strips(piece.id);
    try {
      await loseStrips(run, own, why.trim());
      setWhy('');
      offerUndo(`${piece.label} is spoilt.`, () => loseStrips(run, own, undefined));
    } catch {
      // Not stored: the shell keeps the change and shows it, and the reason stays as it was typed.
    }
  };
  const count = Object.keys(lost).length;
  return (
    <>
      {count > 0 && (
        <div class="answer now">
          <p>
            {count} {count === 1 ? 'strip is' : 'strips are'} spoilt. Plan the rest, and these steps follow the new
            plan.
          </p>
          <a class="button" href={routeTo('breakdown', run.pieceId)}>
            Plan the rest
          </a>
        </div>
      )}
      {piece && (
        <details class="working">
          <summary>A piece is spoilt</summary>
          <div class="fields">
            {good.length > 1 && (
              <Pick
                label="Which"
                value={piece.id}
                options={good.map(({ id, label }) => ({ value: id, label }))}
                onInput={setPieceId}
              />
            )}
            <TextField label="What happened" value={why} onInput={setWhy} />
            <button type="button" class="button" disabled={why.trim() === ''} onClick={() => void spoil()}>
              It is spoilt
            </button>
          </div>
        </details>
      )}
    </>
  );
}
