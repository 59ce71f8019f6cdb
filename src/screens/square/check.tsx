import { useMemo, useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { useLater } from '../../app/later.ts';
import { useOne } from '../../app/live.ts';
import { notify, offerUndo } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { sayPhrase } from '../../core/answer/say-phrase.ts';
import { lineNames, type ReadingName } from '../../core/square/readings.ts';
import { pieces } from '../../store/pieces.ts';
import { squares } from '../../store/squares.ts';
import { Button } from '../../ui/button.tsx';
import { Pick } from '../../ui/fields.tsx';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { units } from '../../ui/units.ts';
import { questions } from '../questions.ts';
import { Answer } from './answer.tsx';
import { type Checked, checkOf } from './check-of.ts';
import { Entries, focusEntry } from './entries.tsx';
import { Found } from './found.tsx';
import { springBackOf } from './habits.ts';
import { situations, ways } from './labels.ts';
import { LayoutAnswer, Triangles } from './layout.tsx';
import { Outline } from './outline.tsx';
import { arrowsOf, lineValues, plainOutline } from './outline-of.ts';
import { PastChecks } from './past-checks.tsx';
import { precisionOf } from './precision-of.ts';
import { SpringBack } from './spring-back.tsx';
import { emptyForm, entryOfLine, type SquareForm } from './square-form.ts';
import { Tolerance } from './tolerance.tsx';
import { perMetreOf } from './tool-error.ts';

/** Is it square, which way is it out, and how far to move it: from a tape, or a stick and a ruler. */
export default function Check({ id }: { id: string }) {
  const piece = useOne(pieces, id);
  const { unit } = units.value;
  // A bare number means another length in other units: each keeps its own texts.
  const draft = useDraft<SquareForm>(`square-form-3-${id}-${unit}`, emptyForm);
  const [focused, setFocused] = useState<ReadingName>();
  const [typing, setTyping] = useState(false);
  const form = draft.value ?? emptyForm;
  const precision = precisionOf(form.way, shop.value.tapePrecision);
  const springBack = springBackOf(shop.value.square);
  const checked = useMemo(
    () => ({ form, ...checkOf(form, unit, precision, springBack, typing) }),
    [form, unit, precision, springBack, typing],
  );
  const change = (part: Partial<SquareForm>) => draft.edit((now) => ({ ...now, ...part }));
  // What is typed by the time of the way back has a way back itself; readings of two pieces are never mixed.
  const swap = (texts: SquareForm['texts'], said: string) =>
    draft.edit((now) => {
      offerUndo(said, () => swap(now.texts, 'Readings back.'));
      return { ...now, texts };
    });
  // What the answer rests on follows it at the next pause, so that a key is answered within a frame.
  const rests = useLater(checked);
  const drawing = useMemo(() => <Drawn of={rests} focused={focused} />, [rests, focused, shop.value]);
  const beneath = useMemo(
    () => <Beneath of={rests} id={id} onChange={change} onClear={() => swap({}, 'Readings cleared.')} />,
    [rests, id, shop.value],
  );
  if (!draft.value) return null;

  const { problems, measured, answer, correction, trouble, suspect } = checked;
  const found = answer?.value;
  const layout = layoutOf(checked);
  const keepable = found?.closing.consistent && found.shape !== 'undetermined';

  const keep = () =>
    measured &&
    // A piece that is still being read counts, one that is gone doesn’t.
    squares
      .add({ ...(id && piece !== null ? { pieceId: id } : {}), ...measured, precision, use: form.use, at: Date.now() })
      .then(
        () => notify('Check kept.'),
        // The shell keeps and shows what the phone did not take; the form stays.
        () => {},
      );

  return (
    <Screen
      question={form.situation === 'layout' ? 'How do I lay it out square?' : questions.square}
      kicker={piece ? `Square · ${piece.name}` : 'Square'}
      action={
        <Button look="big now" disabled={!keepable} onClick={keep}>
          Keep this check
        </Button>
      }
    >
      <div aria-live="polite" class="square-answer">
        {layout ? (
          <LayoutAnswer {...layout} />
        ) : correction && found ? (
          <Answer of={correction} good={found.shape === 'square'}>
            {suspect && (
              <Button
                onClick={() => {
                  change({ texts: { ...form.texts, [suspect]: '' } });
                  focusEntry(suspect);
                }}
              >
                Measure it again
              </Button>
            )}
          </Answer>
        ) : (
          <div class={trouble ? 'answer now' : 'soft'}>
            <p>
              {trouble ? (
                <Say phrase={trouble.message} />
              ) : problems.size > 0 ? (
                'The marked entry first.'
              ) : (
                'Measure what you can reach.'
              )}
            </p>
          </div>
        )}
      </div>
      {drawing}
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
      <Entries form={form} problems={problems} onChange={change} onFocus={setFocused} onTyping={setTyping} />
      {beneath}
    </Screen>
  );
}

type CheckedForm = Checked & { readonly form: SquareForm };

function layoutOf({ form, values: { front, left } }: CheckedForm) {
  return form.situation === 'layout' && front && left ? { length: front, width: left } : undefined;
}

interface BeneathProps {
  of: CheckedForm;
  /** Of the piece. */
  id: string;
  onChange(part: Partial<SquareForm>): void;
  onClear(): void;
}

/** What the answer rests on, and where to go from it. */
function Beneath({ of, id, onChange, onClear }: BeneathProps) {
  const { form, answer, correction } = of;
  const layout = layoutOf(of);
  const toolPerMetre =
    form.way !== 'readings' && form.farEnd === 'square' ? perMetreOf(form.tool, shop.value.references) : 0;
  return (
    <>
      {layout && <Triangles {...layout} />}
      {form.situation === 'clamps' && <SpringBack />}
      {answer && correction && <Found of={answer} correction={correction} />}
      {form.situation !== 'layout' && (
        <Tolerance
          of={correction && answer?.value}
          use={form.use}
          toolPerMetre={toolPerMetre}
          onUse={(use) => onChange({ use })}
        />
      )}
      <Button disabled={Object.values(form.texts).every((text) => text.trim() === '')} onClick={onClear}>
        Clear the readings
      </Button>
      <PastChecks pieceId={id} />
      <div class="buttons">
        <a class="button" href={routeTo('square', 'mitres')}>
          Mitred corners
        </a>
        <a class="button" href={routeTo('square', 'tools')}>
          Test your tools
        </a>
      </div>
    </>
  );
}

/** The piece as it was checked, with the lines lit that are being measured or have to be measured again. */
function Drawn({ of, focused }: { of: CheckedForm; focused: ReadingName | undefined }) {
  const { form, values, problems, answer, correction } = of;
  const found = answer?.value;
  return (
    <Outline
      outline={correction && found ? found.outline : plainOutline(values)}
      say={`The piece, corners A to D.${found ? ` ${sayPhrase(found.say, units.value)}` : ''}`}
      values={lineValues(form, values, units.value)}
      arrows={arrowsOf(correction)}
      lit={lineNames.filter((line) => {
        const entry = entryOfLine(line, form);
        return entry !== undefined && (entry === focused || problems.has(entry));
      })}
      onLine={(line) => focusEntry(entryOfLine(line, form))}
    />
  );
}
