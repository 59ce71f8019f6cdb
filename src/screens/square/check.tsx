import { useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { useOne } from '../../app/live.ts';
import { notify } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { sayPhrase } from '../../core/answer/say-phrase.ts';
import { readingNames } from '../../core/square/readings.ts';
import { squareness } from '../../core/square/squareness.ts';
import { pieces } from '../../store/pieces.ts';
import { squares } from '../../store/squares.ts';
import { Pick } from '../../ui/fields.tsx';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { units } from '../../ui/units.ts';
import { Answer } from './answer.tsx';
import { correctionOf } from './correction-of.ts';
import { Entries, focusEntry } from './entries.tsx';
import { Found } from './found.tsx';
import { useHabits } from './habits.ts';
import { situations, ways } from './labels.ts';
import { LayoutAnswer, Triangles } from './layout.tsx';
import { keptOf } from './measured-of.ts';
import { Outline } from './outline.tsx';
import { arrowsOf, lineValues, plainOutline } from './outline-of.ts';
import { PastChecks } from './past-checks.tsx';
import { precisionOf } from './precision-of.ts';
import { SpringBack } from './spring-back.tsx';
import { type Entry, emptyForm, entriesOf, entryOfLine, readSquareForm, type SquareForm } from './square-form.ts';
import { Tolerance } from './tolerance.tsx';
import { perMetreOf } from './tool-error.ts';

/** Is it square, which way is it out, and how far to move it: from a tape, or a stick and a ruler. */
export default function Check({ id }: { id: string }) {
  const piece = useOne(pieces, id);
  const { value: form, set } = useDraft<SquareForm>(`square-form-2-${id}`, emptyForm);
  const [habits, setHabits] = useHabits();
  const [focused, setFocused] = useState<Entry>();
  const [typing, setTyping] = useState(false);
  if (!form) return null;

  const change = (part: Partial<SquareForm>) => set({ ...form, ...part });
  const precision = precisionOf(form.way, shop.value.tapePrecision);
  const { values, problems, measured } = readSquareForm(form, units.value.unit);
  const outcome = measured && squareness(measured, precision);
  const answer = outcome && !isProblem(outcome) ? outcome : undefined;
  const found = answer?.value;
  // A length that is still being typed contradicts the others until its last key: say so only once it is left.
  const trouble = outcome && isProblem(outcome) && !typing ? outcome : undefined;
  const troubleAt = trouble && entriesOf(form).find((entry) => trouble.field.endsWith(entry));
  const suspect = typing ? undefined : (found?.suspect ?? undefined);
  const settled = found && (found.closing.consistent || !typing);
  const correction = found && settled ? correctionOf(found, form.situation, habits.springBack) : undefined;
  const { length, width } = values;
  const layout = form.situation === 'layout' && length && width ? { length, width } : undefined;
  const keepable = found?.closing.consistent && found.shape !== 'undetermined';
  const toolPerMetre =
    form.way !== 'readings' && form.farEnd === 'square' ? perMetreOf(form.tool, shop.value.references) : 0;

  const keep = async () => {
    if (!measured || !answer) return;
    try {
      await squares.add({
        ...(piece ? { pieceId: piece.id } : {}),
        ...keptOf(measured),
        precision,
        use: form.use,
        at: Date.now(),
      });
      notify('Check kept. Correct it, then measure again.');
    } catch {
      // The shell keeps and shows what the phone did not take; the form stays.
    }
  };

  return (
    <Screen
      question={form.situation === 'layout' ? 'How do I lay it out square?' : 'Is it square?'}
      kicker={piece ? `Square · ${piece.name}` : 'Square'}
      action={
        <button type="button" class="button big now" disabled={!keepable} onClick={() => void keep()}>
          Keep this check
        </button>
      }
    >
      <div aria-live="polite" class="square-answer">
        {layout ? (
          <LayoutAnswer {...layout} />
        ) : correction && found ? (
          <Answer of={correction} good={found.shape === 'square'}>
            {suspect && (
              <button
                type="button"
                class="button"
                onClick={() => {
                  change({ texts: { ...form.texts, [suspect]: '' } });
                  focusEntry(suspect);
                }}
              >
                Measure it again
              </button>
            )}
          </Answer>
        ) : (
          <div class={trouble ? 'answer now' : 'soft'}>
            <p>{trouble ? <Say phrase={trouble.message} /> : 'Measure what you can reach.'}</p>
          </div>
        )}
      </div>
      <Outline
        outline={correction && found ? found.outline : plainOutline({ values })}
        say={found ? `The piece, corners A to D. ${sayPhrase(found.say, units.value)}` : 'The piece, corners A to D.'}
        values={lineValues(form, values, units.value)}
        arrows={arrowsOf(correction)}
        lit={readingNames.filter((line) => {
          const entry = entryOfLine(line, form);
          return entry !== undefined && [focused, suspect, troubleAt].includes(entry);
        })}
        onLine={(line) => focusEntry(entryOfLine(line, form))}
      />
      <div class="fields">
        <Pick
          label="The work"
          value={form.situation}
          options={situations}
          onInput={(situation) => change({ situation })}
        />
        {form.situation !== 'layout' && (
          <Pick label="Measured with" value={form.way} options={ways} onInput={(way) => change({ way })} />
        )}
      </div>
      <Entries
        form={form}
        problems={problems}
        trouble={trouble && troubleAt && { at: troubleAt, problem: trouble }}
        suspect={suspect}
        onChange={change}
        onFocus={setFocused}
        onTyping={setTyping}
      />
      {layout && <Triangles {...layout} />}
      {form.situation === 'clamps' && (
        <SpringBack value={habits.springBack} onAccept={(springBack) => setHabits({ springBack })} />
      )}
      {answer && correction && <Found of={answer} correction={correction} />}
      {form.situation !== 'layout' && (
        <Tolerance
          of={correction && found}
          use={form.use}
          toolPerMetre={toolPerMetre}
          habits={habits}
          onUse={(use) => change({ use })}
          onHabits={setHabits}
        />
      )}
      <button
        type="button"
        class="button"
        disabled={Object.values(form.texts).every((text) => text.trim() === '')}
        onClick={() => {
          change({ texts: {} });
          notify('Readings cleared.', { label: 'Undo', run: () => change({ texts: form.texts }) });
        }}
      >
        Clear the readings
      </button>
      <PastChecks pieceId={id} />
      <div class="buttons">
        <a class="button" href={routeTo('square', 'mitres')}>
          Mitred corners
        </a>
        <a class="button" href={routeTo('square', 'tools')}>
          Test your square and edges
        </a>
      </div>
    </Screen>
  );
}
