import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Board } from '../../store/records/board.ts';
import { Button } from '../../ui/button.tsx';
import { NumberField, Pick, TextField, Tick } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import { units } from '../../ui/units.ts';
import { thicknessOptions } from './board-form.ts';
import { FixBoard } from './fix-board.tsx';
import type { BoardEntryState } from './use-board-entry.ts';

interface Props {
  entry: BoardEntryState;
  /** Boards logged so far: the last one can be put right at once. */
  boards: readonly Board[];
  /** The running sum. */
  children?: ComponentChildren;
}

/** The thumb's next thing. */
export const LogButton = ({ entry }: { entry: BoardEntryState }) => (
  <Button look="big now" onClick={entry.log}>
    Log board
  </Button>
);

/** The next board: width, length, next. What stays the same from one to the next is carried over. */
export function BoardEntryFields({ entry, boards, children }: Props) {
  const [fixing, setFixing] = useState('');
  const { typed, woods, said, log } = entry;
  if (!typed) return null;
  const { form, field, change } = typed;
  const last = boards.at(-1);
  const fixed = fixing === '' ? undefined : boards.find(({ id }) => id === fixing);
  return (
    <>
      {fixed && <FixBoard board={fixed} onDone={() => setFixing('')} />}
      <section class="card" aria-label="Next board" ref={typed.entries}>
        <div class="split">
          <h2>Next board</h2>
          {last && !fixed && <Button onClick={() => setFixing(last.id)}>Fix {last.chalk}</Button>}
        </div>
        <p role="status" class="soft small">
          {said}
          {children}
        </p>
        <div class="fields">
          <TextField label="Chalk mark" {...field('chalk')} />
          <Pick
            label="Thickness"
            value={form.quarters}
            options={thicknessOptions(form.quarters)}
            onInput={(quarters) => change({ quarters })}
          />
        </div>
        {form.quarters === 'measured' && <LengthField label="As measured" {...field('thickness')} />}
        <SpeciesPick label="Wood" first={woods} {...field('species')} />
        <div class="fields sizes">
          <LengthField label="Width" {...field('width')} />
          {form.tapers && <LengthField label="At the far end" {...field('farWidth')} />}
          <LengthField
            label="Length"
            {...field('length')}
            hint={form.lastLength ? `${units.value.unit}, else ${form.lastLength}` : undefined}
            done={{ label: 'Log board', run: log }}
          />
        </div>
        <div class="fields">
          <Tick label="Tapers" checked={form.tapers} onInput={(tapers) => change({ tapers })} />
          <NumberField label="How many alike" {...field('alike')} />
        </div>
      </section>
    </>
  );
}
