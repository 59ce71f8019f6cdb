import { useRef, useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { undoable } from '../../app/notices.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import type { FollowedReading } from '../../core/milling/follow-readings.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import { type Measured, withMeasured } from '../../core/milling/with-measured.ts';
import { millings } from '../../store/millings.ts';
import type { Milling } from '../../store/records/milling.ts';
import { Button } from '../../ui/button.tsx';
import { Pick, Tick } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { Say } from '../../ui/say.tsx';
import { units } from '../../ui/units.ts';
import { without } from '../../ui/without.ts';
import { PassesLeft } from './passes-left.tsx';
import { inputOfRun } from './steps-of-run.ts';

interface Props {
  run: Milling;
  step: MillingStep;
  /** All steps as they stand after the readings so far. */
  steps: readonly MillingStep[];
  readings: readonly FollowedReading[];
}

const empty = { piece: '', text: '', clean: false };

const setReadings = (id: string, edit: (now: readonly Measured[]) => readonly Measured[]) =>
  millings.change(id, (run) => ({ ...run, measured: edit(run.measured ?? []) }));

/** What was really measured on a piece: later targets follow it. */
export function MeasureEntry({ run, step, steps, readings }: Props) {
  const draft = useDraft(`measured-1-${run.id}-${step.id}-${units.value.unit}`, empty);
  const [refused, setRefused] = useState<Problem>();
  const begun = useRef(false);
  const form = draft.value;
  const dimension = step.target?.dimension;
  const piece = step.pieces.find(({ id }) => id === form?.piece) ?? step.pieces[0];
  if (!form || !dimension || !piece) return null;
  // What is begun stays in sight, though its last figure is deleted to be typed again.
  begun.current ||= form.text !== '';
  const typed = parseLength(form.text, units.value.unit);
  const set = (part: Partial<typeof empty>) => {
    setRefused(undefined);
    draft.set({ ...form, ...part });
  };
  const readingOf = (value: number, accepted: boolean): Measured => ({
    step: step.id,
    piece: piece.id,
    dimension,
    value,
    ...(accepted && { accepted }),
    ...(form.clean && { clean: true }),
  });
  const trouble = (accepted: boolean): Problem | undefined => {
    const followed = isProblem(typed) ? typed : withMeasured(steps, readingOf(typed, accepted));
    return isProblem(followed) ? followed : undefined;
  };

  const keep = async (accepted: boolean) => {
    const wrong = trouble(accepted);
    setRefused(wrong);
    if (wrong || isProblem(typed)) return;
    try {
      await setReadings(run.id, (now) => [...now, readingOf(typed, accepted)]);
      begun.current = false;
      draft.clear({ ...empty, piece: piece.id });
    } catch {
      // Not stored: the shell keeps the change and shows it, and the entry stays as it was typed.
    }
  };
  const drop = (reading: Measured) =>
    undoable(
      setReadings(run.id, (now) => without(now, reading)),
      'Reading deleted.',
      () => setReadings(run.id, (now) => [...now, reading]),
    );

  const target = piece.target ?? step.target?.value;
  return (
    <section class="measured" aria-label="Measured">
      <details class="working" open={begun.current}>
        <summary>Measured something?</summary>
        <div class="fields">
          {step.pieces.length > 1 && (
            <Pick
              label="Piece"
              value={piece.id}
              options={step.pieces.map(({ id, label }) => ({ value: id, label }))}
              onInput={(id) => set({ piece: id })}
            />
          )}
          <LengthField
            label={`Measured ${dimension}`}
            value={form.text}
            problem={refused}
            onInput={(text) => set({ text })}
            done={{ label: 'Keep it', run: () => void keep(false) }}
          />
        </div>
        {dimension === 'thickness' && target !== undefined && (
          <PassesLeft machine={step.machine} thickness={typed} target={target} limits={inputOfRun(run).limits} />
        )}
        {dimension === 'thickness' && (
          <Tick label="Both faces just clean" checked={form.clean} onInput={(clean) => set({ clean })} />
        )}
        <div class="buttons">
          <Button onClick={() => keep(false)}>Keep it</Button>
          {refused && !trouble(true) && <Button onClick={() => keep(true)}>Go on with it</Button>}
        </div>
      </details>
      <ul class="rows" aria-live="polite">
        {readings
          .filter(({ reading }) => reading.step === step.id)
          .map(({ reading, notes, problem }) => (
            <li key={`${reading.piece} ${reading.value}`}>
              <div>
                <p>
                  {step.pieces.find(({ id }) => id === reading.piece)?.label}:{' '}
                  <b>
                    <Length mm={reading.value} />
                  </b>
                  {reading.clean && ', clean'}
                </p>
                {notes.map((note) => (
                  <p>
                    <Say phrase={note} />
                  </p>
                ))}
                {problem && (
                  <p class="soft">
                    Doesn’t count: <Say phrase={problem.message} />
                  </p>
                )}
              </div>
              <Button look="plain" onClick={() => drop(reading)}>
                Delete
              </Button>
            </li>
          ))}
      </ul>
    </section>
  );
}
