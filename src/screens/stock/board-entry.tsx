import type { ComponentChildren } from 'preact';
import type { Board } from '../../store/records/board.ts';
import { Button } from '../../ui/button.tsx';
import { NumberField, Pick, TextField, Tick } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import { units } from '../../ui/units.ts';
import { type BoardField, thicknessOptions } from './board-form.ts';
import { removeBoard } from './remove-board.ts';
import type { BoardEntryState } from './use-board-entry.ts';

interface Props {
  entry: BoardEntryState;
  /** The board that was logged last, to be put right at once. */
  last: Board | undefined;
  /** The running sum. */
  children?: ComponentChildren;
}

/** The thumb's next thing: logs the board, or puts the one in the entries right. */
export const LogButton = ({ entry }: { entry: BoardEntryState }) => (
  <Button look="big now" onClick={entry.log}>
    {entry.logs}
  </Button>
);

/** The entries of the next board, or of one that is being put right. */
export function BoardEntryFields({ entry, last, children }: Props) {
  const { form, read, proposedMark, set } = entry;
  if (!form || !read) return null;
  const field = (name: Exclude<BoardField, 'quarters' | 'thickness'> | 'measured') => ({
    value: form[name] ?? '',
    problem: form.tried ? read.problems.get(name === 'measured' ? 'thickness' : name) : undefined,
    onInput: (text: string) => set({ ...form, [name]: text }),
  });
  const fixing = form.fixing !== '';
  return (
    <section class="card" aria-label={fixing ? 'Fix' : 'Next board'} ref={entry.entries}>
      <div class="split">
        <h2>{fixing ? `Fix ${form.chalk}` : 'Next board'}</h2>
        {!fixing && last && <Button onClick={() => entry.fix(last)}>Fix {last.chalk}</Button>}
      </div>
      <p role="status" class="soft small">
        {entry.said}
        {children}
      </p>
      <div class="fields">
        <TextField label="Chalk mark" {...field('chalk')} value={form.chalk ?? proposedMark} />
        <Pick
          label="Thickness"
          value={form.thickness}
          options={thicknessOptions(form.thickness)}
          onInput={(thickness) => set({ ...form, thickness })}
        />
      </div>
      {form.thickness === 'measured' && <LengthField label="As measured" {...field('measured')} />}
      <SpeciesPick label="Wood" first={entry.woods} {...field('species')} />
      <div class="fields sizes">
        <LengthField label="Width" {...field('width')} />
        {form.tapers && <LengthField label="At the far end" {...field('farWidth')} />}
        <LengthField
          label="Length"
          {...field('length')}
          hint={form.lastLength ? `${units.value.unit}, else ${form.lastLength}` : undefined}
          done={{ label: entry.logs, run: entry.log }}
        />
      </div>
      <div class="fields">
        <Tick label="Tapers" checked={form.tapers} onInput={(tapers) => set({ ...form, tapers })} />
        {!fixing && <NumberField label="How many alike" {...field('alike')} />}
      </div>
      {fixing && (
        <div class="buttons">
          <Button onClick={entry.leave}>Leave it</Button>
          {last?.id === form.fixing && (
            <Button
              onClick={() => {
                entry.leave();
                void removeBoard(last);
              }}
            >
              Delete {last.chalk}
            </Button>
          )}
        </div>
      )}
    </section>
  );
}
