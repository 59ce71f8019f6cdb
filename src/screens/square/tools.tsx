import { useDraft } from '../../app/draft.ts';
import { notify } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { Button } from '../../ui/button.tsx';
import { Choice, TextField } from '../../ui/fields.tsx';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { type Entries, useEntries } from '../movement/entries.tsx';
import { setTools, withReference } from './tool-error.ts';
import { ToolList } from './tool-list.tsx';
import { type ToolEntry, type ToolKind, toolTest } from './tool-test.ts';
import { kindWords, toolKinds, type Way } from './tool-words.ts';

/** What a test says beside its lengths. */
interface About {
  readonly name: string;
  readonly way: Way;
  readonly swappedWay: Way;
}

const emptyAbout: About = { name: '', way: 'plus', swappedWay: 'plus' };

/** How far the tools that say what is square are out themselves. Each kind has its own draft, so that none is mixed or lost. */
export function Tools() {
  const { value: kind = 'square', set: choose } = useDraft<ToolKind>('tool-kind-1', 'square');
  const { value: about = emptyAbout, set } = useDraft<About>(`tool-about-1-${kind}`, emptyAbout);
  const { steps, way, ways, ...words } = kindWords[kind];
  const entries = useEntries(`tool-1-${kind}`, words.entries as Entries<ToolEntry>);
  const { references = [] } = shop.value;
  const name = about.name.trim();
  const known = references.find((reference) => reference.tool === name && reference.kind === 'sticks');
  const signed = (gap: number, lies: Way) => (lies === 'plus' ? gap : -gap);
  const needed: readonly ToolEntry[] = kind === 'sticks' ? ['length', 'gap', 'width'] : ['length', 'gap'];
  let swaps = false;
  const test = entries?.ask(({ length, gap, width, swapped }) => {
    swaps = swapped !== undefined;
    return toolTest({
      kind,
      length,
      gap: signed(gap, about.way),
      width,
      swapped: swapped && signed(swapped, about.swappedWay),
      known,
    });
  }, needed);
  const good = test && !isProblem(test) ? test : undefined;
  const own = good?.own;
  const remember = () =>
    own &&
    setTools((tools) => withReference(tools, { tool: name, kind, at: Date.now(), ...own })).then(
      () => notify(`${name} kept.`),
      // The shell keeps and shows what the phone did not take; the form stays.
      () => {},
    );
  return (
    <Screen
      question="Can you trust your square?"
      kicker="Square"
      action={
        <Button look="big now" disabled={!own || name === ''} onClick={remember}>
          Keep its error
        </Button>
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
      <Choice label="What you test" value={kind} options={toolKinds} onInput={choose} />
      <ol class="parts-in-order">
        {steps.map((step) => (
          <li>{step}</li>
        ))}
      </ol>
      {entries?.fields(test)}
      <Choice label={way} value={about.way} options={ways} onInput={(next) => set({ ...about, way: next })} />
      {swaps && (
        <Choice
          label="With the sticks swapped"
          value={about.swappedWay}
          options={ways}
          onInput={(next) => set({ ...about, swappedWay: next })}
        />
      )}
      <TextField label="Name of the tool" value={about.name} onInput={(next) => set({ ...about, name: next })} />
      <ToolList references={references} />
      <a class="button" href={routeTo('square')}>
        Is it square?
      </a>
    </Screen>
  );
}
