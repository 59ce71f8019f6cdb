import { useState } from 'preact/hooks';
import { isProblem } from '../../core/answer/problem.ts';
import { panelInGroove } from '../../core/movement/panel-in-groove.ts';
import { seasonalGap } from '../../core/movement/seasonal-gap.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Part } from '../../store/records/piece.ts';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { AnswerList } from './answer-list.tsx';
import { useEntries } from './entries.ts';
import { PartPick, widestOf } from './part-pick.tsx';
import { woodOfPart } from './wood-of-part.ts';

interface Props {
  parts: readonly Part[];
  seasons: Seasons;
}

interface OneProps {
  part: Part;
  seasons: Seasons;
}

/** A part that moves inside something that keeps its size: a panel in grooves, a drawer or a door in its opening. */
export function Gaps({ parts, seasons }: Props) {
  const [chosen, choose] = useState(widestOf(parts)?.id ?? '');
  const part = parts.find(({ id }) => id === chosen);
  if (!part) return null;
  return (
    <>
      <PartPick label="Part" parts={parts} value={chosen} onInput={choose} />
      <Groove key={`groove-${part.id}`} part={part} seasons={seasons} />
      <Opening key={`opening-${part.id}`} part={part} seasons={seasons} />
    </>
  );
}

function Groove({ part, seasons }: OneProps) {
  const entries = useEntries(`groove-1-${part.id}`, { opening: part.width, depth: 10 });
  if (!entries) return null;
  const { lengths, field } = entries;
  const found = isProblem(lengths) ? lengths : panelInGroove({ wood: woodOfPart(part), seasons, ...lengths });
  return (
    <section class="task" aria-label="Panel in grooves">
      <h2>As a panel in grooves</h2>
      <div class="fields">
        <LengthField label="Between the frame’s inner edges" {...field('opening', found)} />
        <LengthField label="Depth of a groove" {...field('depth', found)} />
      </div>
      <AnswerList
        of={found}
        entries={['opening', 'depth']}
        main={({ width }) => ['Cut it today to', width]}
        rest={({ gapToday, gapDry, gapWet, heldDry }) => [
          ['Gap in each groove today', gapToday],
          ['in the dry season', gapDry],
          ['in the damp season', gapWet],
          ['Held in each groove when dry', heldDry],
        ]}
      />
    </section>
  );
}

function Opening({ part, seasons }: OneProps) {
  const entries = useEntries(`opening-1-${part.id}`, { opening: part.width, least: 1 });
  if (!entries) return null;
  const { lengths, field } = entries;
  const found = isProblem(lengths) ? lengths : seasonalGap({ wood: woodOfPart(part), seasons, ...lengths });
  return (
    <section class="task" aria-label="Drawer or door">
      <h2>As a drawer front or a door</h2>
      <div class="fields">
        <LengthField label="Opening across its grain" {...field('opening', found)} />
        <LengthField label="Least gap, both sides together" {...field('least', found)} />
      </div>
      <AnswerList
        of={found}
        entries={['opening', 'least']}
        main={({ size }) => ['Make it today', size]}
        rest={({ gapToday, gapDry, gapWet }) => [
          ['Gap today, both sides together', gapToday],
          ['in the dry season', gapDry],
          ['in the damp season', gapWet],
        ]}
      />
    </section>
  );
}
