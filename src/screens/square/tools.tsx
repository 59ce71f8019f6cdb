import { useDraft } from '../../app/draft.ts';
import { notify } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import { changeShop } from '../../store/shop.ts';
import { Choice, TextField } from '../../ui/fields.tsx';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import { LengthEntries } from './length-entries.tsx';
import { readTexts, type Texts } from './read-texts.ts';
import { withReference } from './tool-error.ts';
import { ToolList } from './tool-list.tsx';
import { type ToolEntry, type ToolKind, toolTest } from './tool-test.ts';
import { kindWords } from './tool-words.ts';

/** One test as it is typed. */
interface TestForm {
  readonly name: string;
  readonly texts: Texts<ToolEntry>;
  readonly way: 'plus' | 'minus';
  readonly swappedWay: 'plus' | 'minus';
}

/** A test of each kind, so that going from one to another mixes and loses nothing. */
interface ToolForm {
  readonly kind: ToolKind;
  readonly tests: Readonly<Partial<Record<ToolKind, TestForm>>>;
}

const emptyTest: TestForm = { name: '', texts: {}, way: 'plus', swappedWay: 'plus' };
const emptyForm: ToolForm = { kind: 'square', tests: {} };

/** How far the tools that say what is square are out themselves. */
export function Tools() {
  const { value: all, set } = useDraft<ToolForm>('square-tool-form-1', emptyForm);
  if (!all) return null;
  const { kind } = all;
  const form = all.tests[kind] ?? emptyTest;
  const change = (part: Partial<TestForm>) => set({ ...all, tests: { ...all.tests, [kind]: { ...form, ...part } } });
  const words = kindWords[kind];
  const entries = Object.keys(words.entries) as ToolEntry[];
  const { values, problems } = readTexts(entries, form.texts, (text) => parseLength(text, units.value.unit));
  const { references } = shop.value;
  const name = form.name.trim();
  const known = references?.find((reference) => reference.tool === name && reference.kind === 'sticks');
  const test =
    problems.size > 0
      ? undefined
      : toolTest({
          kind,
          values,
          positive: form.way === 'plus',
          swappedPositive: form.swappedWay === 'plus',
          known: known?.length ? { error: known.error, length: known.length } : undefined,
        });
  const good = test && !isProblem(test) ? test : undefined;
  if (isProblem(test)) {
    const field = { seen: 'gap', stickLength: 'length' }[test.field] ?? test.field;
    problems.set(field, test);
  }
  const own = good?.own;

  const remember = async () => {
    if (!own || name === '') return;
    try {
      const at = Date.now();
      await changeShop((now) => ({
        ...now,
        references: withReference(now.references, { tool: name, kind, at, ...own }),
      }));
      notify(`${name} kept.`);
    } catch {
      // The shell keeps and shows what the phone did not take; the form stays.
    }
  };

  return (
    <Screen
      question="Can you trust your square?"
      kicker="Square"
      action={
        <button type="button" class="button big now" disabled={!own || name === ''} onClick={() => void remember()}>
          Keep its error
        </button>
      }
    >
      <div aria-live="polite" class="square-answer">
        {good && (
          <div class="answer">
            <p class="figure">
              <Say phrase={good.large} />
            </p>
            <p>
              <Say phrase={good.say} />
            </p>
            <ShowWorking of={good.working} />
          </div>
        )}
      </div>
      <Choice
        label="What you test"
        value={kind}
        options={[
          { value: 'square', label: 'Try square' },
          { value: 'straightedge', label: 'Straightedge' },
          { value: 'sticks', label: 'Winding sticks' },
        ]}
        onInput={(next) => set({ ...all, kind: next })}
      />
      <ol class="parts-in-order">
        {words.steps.map((step) => (
          <li>{step}</li>
        ))}
      </ol>
      <LengthEntries
        key={kind}
        labels={words.entries}
        texts={form.texts}
        problems={problems}
        onType={(entry, text) => change({ texts: { ...form.texts, [entry]: text } })}
      />
      <Choice label={words.way} value={form.way} options={words.ways} onInput={(way) => change({ way })} />
      {kind === 'sticks' && values.swapped !== undefined && (
        <Choice
          label="With the sticks swapped"
          value={form.swappedWay}
          options={words.ways}
          onInput={(swappedWay) => change({ swappedWay })}
        />
      )}
      <TextField label="Name of the tool" value={form.name} onInput={(next) => change({ name: next })} />
      <ToolList references={references ?? []} />
      <a class="button" href={routeTo('square')}>
        Is it square?
      </a>
    </Screen>
  );
}
