import { useDraft } from '../../app/draft.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { degrees } from '../../core/answer/quantity.ts';
import { bevelWidth } from '../../core/square/bevel-width.ts';
import { mitreFrame } from '../../core/square/mitre-frame.ts';
import { type MitreGap, mitreGap } from '../../core/square/mitre-gap.ts';
import { Amount } from '../../ui/amount.tsx';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { angles, type Entries, useEntries } from '../movement/entries.tsx';
import { cornerNames } from './place-outline.ts';

/** The eight cuts of a frame, by corner and the part that is cut. */
const cuts = ['A front', 'A left', 'B front', 'B right', 'C right', 'C back', 'D back', 'D left'];
const ways = optionsOf({ one: 'One saw setting', each: 'Each measured' });

const entriesOf: Readonly<Record<(typeof ways)[number]['value'], Entries<string>>> = {
  one: { all: ['All eight cuts', 45, 'degrees'] },
  each: Object.fromEntries(cuts.map((cut) => [cut, [cut, 45, 'degrees']])),
};

/** What the angles of the cuts add up to, and how to share the correction. */
export function FrameAngles() {
  const { value: way = 'one', set } = useDraft<(typeof ways)[number]['value']>('angles-way-1', 'one');
  const stock = useEntries('angles-stock-1', { thickness: ['Thickness, or width of a flat frame'] });
  const points = useEntries(`angles-1-${way}`, entriesOf[way], angles);
  const bevel = stock?.ask(({ thickness }) => bevelWidth(thickness));
  const joint = bevel && !isProblem(bevel) ? bevel.value.bevel : undefined;
  let errors: readonly number[] = [];
  const frame = points?.ask((typed) => {
    const off = Object.values(typed).map((angle) => angle - 45);
    errors = cuts.map((_, at) => off[at % off.length] ?? 0);
    if (joint === undefined) return undefined;
    const found = mitreFrame(errors, joint);
    return isProblem(found) ? { ...found, field: Object.keys(typed)[Number(found.field.split('.')[1])] ?? '' } : found;
  });
  const good = frame && !isProblem(frame) ? frame : undefined;
  return (
    <section class="card" aria-label="Angles">
      <h2>Then: do the angles add up?</h2>
      <div aria-live="polite" class="square-answer">
        {good && (
          <>
            <p>
              <span class="figure">
                <Opening of={good.value.last} />
              </span>{' '}
              at the last corner, the other three pulled tight.
            </p>
            <p>
              <b>
                <Say phrase={good.value.say} />
              </b>
            </p>
            {good.value.last.opens && (
              <p>
                Or only the last corner’s two cuts by <Amount of={degrees(Math.abs(good.value.lastCorner))} /> each.
              </p>
            )}
            <ShowWorking of={good.working} />
          </>
        )}
        {good && joint !== undefined && way === 'each' && <Corners errors={errors} joint={joint} />}
      </div>
      {stock?.fields(bevel)}
      <Choice label="Angles of the points" value={way} options={ways} onInput={set} />
      {points?.fields(frame)}
    </section>
  );
}

function Opening({ of }: { of: MitreGap }) {
  if (of.opens === null) return <>Tight</>;
  return (
    <>
      <Length mm={of.gap} /> open {of.opens}
    </>
  );
}

/** Each corner by itself, held at 90 degrees. */
function Corners({ errors, joint }: { errors: readonly number[]; joint: number }) {
  return (
    <ul class="rows">
      {cornerNames.map((corner, n) => {
        const gap = mitreGap((errors[2 * n] ?? 0) + (errors[2 * n + 1] ?? 0), joint);
        if (isProblem(gap)) return null;
        return (
          <li key={corner}>
            <span>
              Corner {corner} held square: <Opening of={gap.value} />
            </span>
            <ShowWorking of={gap.working} label="Working" />
          </li>
        );
      })}
    </ul>
  );
}
