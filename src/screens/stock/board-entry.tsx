import type { ComponentChildren } from 'preact';
import type { Board } from '../../store/records/board.ts';
import { NumberField, Pick, TextField, Tick } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import { type BoardField, quarterNames } from './board-form.ts';
import { removeBoard } from './remove-board.ts';
import type { BoardEntryState } from './use-board-entry.ts';

const thicknesses = [
  ...quarterNames.map((value) => ({ value, label: `${value}/4` })),
  { value: 'measured', label: 'Measured' },
];

interface Props {
  entry: BoardEntryState;
  /** The board that was logged last, to be put right at once. */
  last: Board | undefined;
  /** The running sum. */
  soFar?: ComponentChildren;
}

/** The entries of the next board, or of one that is being put right. */
export function BoardEntryFields({ entry, last, soFar }: Props) {
  const { form, read, proposedMark, set, log } = entry;
  if (!form || !read) return null;
  const field = (name: BoardField) => ({
    value: form[name] ?? '',
    problem: form.tried ? read.problems.get(name) : undefined,
    onInput: (text: string) => set({ ...form, [name]: text }),
  });
  const fixing = form.fixing !== '';
  const { unit } = entry;
  return (
    <section class="card" aria-label={fixing ? 'Put right' : 'Next board'} ref={entry.entries}>
      <div class="split">
        <h2>{fixing ? `Put ${form.chalk} right` : 'Next board'}</h2>
        {!fixing && last && (
          <button type="button" class="button" onClick={() => entry.fix(last)}>
            Fix {last.chalk}
          </button>
        )}
      </div>
      <p role="status" class="soft small">
        {entry.said}
        {soFar}
      </p>
      <div class="fields">
        <TextField label="Chalk mark" {...field('chalk')} value={form.chalk ?? proposedMark} />
        <Pick
          label="Thickness"
          value={form.thickness}
          options={thicknesses}
          onInput={(thickness) => set({ ...form, thickness })}
        />
      </div>
      {form.thickness === 'measured' && <LengthField label="As measured" {...field('measured')} />}
      <SpeciesPick label="Wood" first={entry.common} {...field('species')} />
      <div class="fields sizes">
        <LengthField label="Width" {...field('width')} />
        {form.tapers && <LengthField label="At the far end" {...field('farWidth')} />}
        <LengthField
          label="Length"
          {...field('length')}
          hint={form.lastLength === '' ? unit : `${unit}, else ${form.lastLength}`}
          done={{ label: fixing ? 'Put right' : 'Log board', run: () => void log() }}
        />
      </div>
      <div class="fields">
        <Tick label="Tapers" checked={form.tapers} onInput={(tapers) => set({ ...form, tapers })} />
        {!fixing && <NumberField label="How many alike" {...field('alike')} />}
      </div>
      {fixing && (
        <div class="buttons">
          <button type="button" class="button" onClick={entry.leave}>
            Leave it as it was
          </button>
          {last?.id === form.fixing && (
            <button
              type="button"
              class="button"
              onClick={() => {
                entry.leave();
                void removeBoard(last);
              }}
            >
              Delete {last.chalk}
            </button>
          )}
        </div>
      )}
    </section>
  );
}
