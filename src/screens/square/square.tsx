import { useDraft } from '../../app/draft.ts';
import { useOne } from '../../app/live.ts';
import { notify } from '../../app/notices.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { sayPhrase } from '../../core/answer/say-phrase.ts';
import { squareness } from '../../core/square/squareness.ts';
import { pieces } from '../../store/pieces.ts';
import { squares } from '../../store/squares.ts';
import { squarenessTolerances } from '../../tables/squareness-tolerances.ts';
import { Choice, Pick } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import { Correction } from './correction.tsx';
import { keptOf } from './measured-of.ts';
import { Outline } from './outline.tsx';
import { PastChecks } from './past-checks.tsx';
import { type Entry, emptyForm, entriesOf, readSquareForm, type SquareForm } from './square-form.ts';
import { Tolerance } from './tolerance.tsx';

const labels: Readonly<Record<Entry, string>> = {
  front: 'Front edge, A to B',
  right: 'Right end, B to C',
  back: 'Back edge, C to D',
  left: 'Left end, D to A',
  diagonalAC: 'Diagonal A to C',
  diagonalBD: 'Diagonal B to D',
  length: 'Length',
  width: 'Width',
  difference: 'Difference of the diagonals',
};

/** Is it square, which way is it out, and how far to move it: from a tape, or a stick and a ruler. */
export default function SquareScreen({ id }: { id: string }) {
  const piece = useOne(pieces, id);
  const draft = useDraft<SquareForm>(`square-form-1-${id}`, emptyForm);
  const form = draft.value;
  if (!form) return null;
  const change = (part: Partial<SquareForm>) => draft.set({ ...form, ...part });
  const precision = shop.value.tapePrecision;
  const { values, problems, measured } = readSquareForm(form, units.value.unit);
  const answer = measured && squareness(measured, precision);
  const found = answer && !isProblem(answer) ? answer : undefined;
  const trouble = answer && isProblem(answer) ? answer : undefined;
  const troubleAt = trouble && entriesOf[form.way].find((entry) => trouble.field.endsWith(entry));

  const keep = async () => {
    if (!measured || !found) return;
    try {
      await squares.add({
        ...(piece ? { pieceId: piece.id } : {}),
        ...keptOf(measured),
        precision,
        use: form.use,
        at: Date.now(),
      });
      notify('Check kept.');
    } catch {
      // The shell keeps and shows what the phone did not take; the form stays.
    }
  };

  return (
    <Screen
      question="Is it square?"
      kicker={piece ? `Square · ${piece.name}` : 'Square'}
      action={
        <button type="button" class="button big now" disabled={!found} onClick={() => void keep()}>
          Keep this check
        </button>
      }
    >
      <div aria-live="polite" class="readout">
        {found ? (
          <>
            <p class={found.value.shape === 'square' ? 'answer' : 'answer now'}>
              <span class="figure words">
                <Say phrase={found.value.say} />
              </span>
            </p>
            <Correction of={found.value} situation={form.situation} />
            <Tolerance of={found.value} use={form.use} />
            <ShowWorking of={found.working} />
            <Outline outline={found.value.outline} say={sayPhrase(found.value.say, units.value)} />
          </>
        ) : (
          <p class="answer">
            <span>
              {trouble && !troubleAt ? (
                <Say phrase={trouble.message} />
              ) : (
                'Stand at the front edge: A is front left, B front right, C back right, D back left. Measure what you can.'
              )}
            </span>
          </p>
        )}
      </div>

      <Choice
        label="How you measure"
        value={form.way}
        options={[
          { value: 'readings', label: 'Sides and diagonals' },
          { value: 'diagonals', label: 'Diagonals only' },
          { value: 'stick', label: 'With a stick' },
        ]}
        onInput={(way) => change({ way })}
      />
      {form.way === 'stick' && (
        <p class="soft">
          Cut a stick to one diagonal, hold it along the other, and measure by how much it is too short.
        </p>
      )}
      <div class="fields">
        {entriesOf[form.way].map((entry) => (
          <LengthField
            key={entry}
            label={labels[entry]}
            value={form.texts[entry] ?? ''}
            problem={problems.get(entry) ?? (troubleAt === entry ? trouble : undefined)}
            onInput={(text) => change({ texts: { ...form.texts, [entry]: text } })}
          />
        ))}
      </div>
      {form.way === 'stick' && (
        <Choice
          label="The longer diagonal"
          value={form.longer}
          options={[
            { value: 'diagonalAC', label: 'A to C' },
            { value: 'diagonalBD', label: 'B to D' },
          ]}
          onInput={(longer) => change({ longer })}
        />
      )}
      {form.way !== 'readings' && (
        <Choice
          label="The diagonals alone can’t tell: which holds?"
          value={form.farEnd}
          options={[
            { value: 'parallel', label: 'Both ends lean alike' },
            { value: 'square', label: 'The left end is square' },
          ]}
          onInput={(farEnd) => change({ farEnd })}
        />
      )}
      <Pick
        label="What stands before you"
        value={form.situation}
        options={[
          { value: 'line', label: 'A panel with a line to cut' },
          { value: 'sawn', label: 'A panel that is sawn already' },
          { value: 'clamps', label: 'A case or frame in clamps' },
          { value: 'layout', label: 'Laying out from nothing' },
        ]}
        onInput={(situation) => change({ situation })}
      />
      <Pick
        label="What it is for"
        value={form.use}
        options={squarenessTolerances.map(({ id: value, label }) => ({ value, label }))}
        onInput={(use) => change({ use })}
      />
      <button
        type="button"
        class="button"
        disabled={Object.keys(values).length === 0}
        onClick={() => draft.clear({ ...form, texts: {} })}
      >
        Clear the readings
      </button>
      <PastChecks pieceId={id} />
    </Screen>
  );
}
