import { useDraft } from '../../app/draft.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { degrees, mm } from '../../core/answer/quantity.ts';
import { bevelWidth } from '../../core/square/bevel-width.ts';
import { mitreFrame } from '../../core/square/mitre-frame.ts';
import type { MitreGap } from '../../core/square/mitre-gap.ts';
import { cornerNames } from '../../core/square/readings.ts';
import { Answer } from '../../ui/answer.tsx';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { Say } from '../../ui/say.tsx';
import { type Entries, numbers, useEntries } from '../movement/entries.tsx';

/** The eight cuts of a frame, by corner and the part that is cut. */
const cuts = ['A front', 'A left', 'B front', 'B right', 'C right', 'C back', 'D back', 'D left'];
const ways = optionsOf({ one: 'One saw setting', each: 'Each measured' });

/** Named as the core names its errors, so that what is wrong with one stands at its entry. */
const entriesOf: Readonly<Record<(typeof ways)[number]['value'], Entries<string>>> = {
  one: { 'errors.0': ['All eight cuts', 45, 'degrees'] },
  each: Object.fromEntries(cuts.map((cut, at) => [`errors.${at}`, [cut, 45, 'degrees']])),
};

/** What the angles of the cuts add up to, and how to share the correction. */
export function FrameAngles() {
  const { value: way = 'one', set } = useDraft<(typeof ways)[number]['value']>('angles-way-1', 'one');
  const stock = useEntries('angles-stock-1', { thickness: ['Thickness, or width of a flat frame'] });
  const points = useEntries(`angles-2-${way}`, entriesOf[way], numbers);
  const bevel = stock?.ask(({ thickness }) => bevelWidth(thickness));
  const frame =
    bevel && !isProblem(bevel)
      ? points?.ask((typed) => {
          const off = Object.values(typed).map((angle) => angle - 45);
          return mitreFrame(
            cuts.map((_, at) => off[at % off.length] ?? 0),
            bevel.value.bevel,
          );
        })
      : undefined;
  const good = frame && !isProblem(frame) ? frame : undefined;
  return (
    <section class="card" aria-label="Angles">
      <h2>Then: do the angles add up?</h2>
      <div aria-live="polite" class="square-answer">
        {good && (
          <Answer
            label={`Last corner, the other three pulled tight: ${opening(good.value.last)}`}
            of={mm(good.value.last.gap)}
            facts={[
              ...(good.value.last.opens
                ? [['Or change its two cuts alone, each by', degrees(Math.abs(good.value.lastCorner))] as const]
                : []),
              ...(way === 'each' ? good.value.corners : []).map(
                (gap, at) => [`Corner ${cornerNames[at]} held square: ${opening(gap)}`, mm(gap.gap)] as const,
              ),
            ]}
            working={good.working}
          >
            <p>
              <b>
                <Say phrase={good.value.say} />
              </b>
            </p>
          </Answer>
        )}
      </div>
      {stock?.fields(bevel)}
      <Choice label="Angles of the points" value={way} options={ways} onInput={set} />
      {points?.fields(frame)}
    </section>
  );
}

const opening = ({ opens }: MitreGap): string => (opens === null ? 'tight' : `open ${opens}`);
