import { useTexts } from '../../app/form.ts';
import { useNow } from '../../app/now.ts';
import { seconds } from '../../core/answer/quantity.ts';
import { sayPhrase } from '../../core/answer/say-phrase.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import { pieces } from '../../store/pieces.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Timer } from '../../store/records/timer.ts';
import { timers as store } from '../../store/timers.ts';
import { Amount } from '../../ui/amount.tsx';
import { Button } from '../../ui/button.tsx';
import { clockTime } from '../../ui/clock-time.ts';
import { NumberField } from '../../ui/fields.tsx';
import { Fold } from '../../ui/fold.tsx';
import { TimeLeft } from '../../ui/time-left.tsx';
import { units } from '../../ui/units.ts';
import { readPercent } from '../stock/reading-form.tsx';

interface Props {
  run: Milling;
  piece: Piece;
  step: MillingStep;
  timers: readonly Timer[];
}

/** The waits that still run for a step are over: the maker or a reading says so. */
function endWaits(timers: readonly Timer[], stepId: string): void {
  const over = timers.filter(({ step, doneAt }) => step === stepId && doneAt === undefined).map(({ id }) => id);
  // A write that fails is kept and shown by the shell.
  void store.changeMany(over, (timer) => ({ ...timer, doneAt: Date.now() })).catch(() => {});
}

/** A wait of the sequence as a timer: it holds the instant it ends, and a reading may end it before. */
export function RestTimer({ run, piece, step, timers }: Props) {
  const { waits = 0 } = step;
  const own = timers.filter((timer) => timer.step === step.id);
  const running = own.find(({ doneAt }) => doneAt === undefined);
  if (running) return <Running timer={running} piece={piece} onEnd={() => endWaits(timers, step.id)} />;
  const start = () => {
    const now = Date.now();
    void store
      .add({
        name: piece.name,
        for: { kind: 'milling', id: run.id },
        phase: sayPhrase(step.title, units.value),
        step: step.id,
        startedAt: now,
        endsAt: now + waits * 1000,
      })
      .catch(() => {});
  };
  return (
    <div class="answer wait">
      <span class="figure words">
        <Amount of={seconds(waits)} />
      </span>
      {own.length > 0 && <span>The wait has ended.</span>}
      <Button look="big" onClick={start}>
        {own.length > 0 ? 'Start it again' : 'Start the wait'}
      </Button>
    </div>
  );
}

function Running({ timer, piece, onEnd }: { timer: Timer; piece: Piece; onEnd(): void }) {
  const now = useNow();
  const left = Math.round((timer.endsAt - now) / 1000);
  return (
    <div class={left > 0 ? 'answer wait' : 'answer now'}>
      <TimeLeft left={left} />
      <span class="soft small">Until {clockTime(timer.endsAt, now)}. The app can’t wake a locked phone.</span>
      {left > 0 ? <ReadyByReading piece={piece} onEnd={onEnd} /> : <Button onClick={onEnd}>Seen to</Button>}
    </div>
  );
}

const reads = { percent: readPercent };

/** A moisture reading that shows the wood at rest ends the wait; the piece keeps it. */
function ReadyByReading({ piece, onEnd }: { piece: Piece; onEnd(): void }) {
  const typed = useTexts(`rest-form-1-${piece.id}`, reads);
  if (!typed) return null;
  const end = () =>
    typed.store(async (read) => {
      await pieces.change(piece.id, (now) => ({ ...now, reading: { at: Date.now(), ...read } }));
      onEnd();
    });
  return (
    <Fold label="A reading says it is ready">
      <div class="fields">
        <NumberField label="Meter reads" hint="%" {...typed.field('percent')} />
        <Button onClick={end}>End the wait</Button>
      </div>
    </Fold>
  );
}
