import { useState } from 'preact/hooks';
import { seasonalGap } from '../../core/movement/seasonal-gap.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Part } from '../../store/records/piece.ts';
import { GrooveTask } from './groove-task.tsx';
import { LengthTask } from './length-task.tsx';
import { PartNote, PartPick, widestOf } from './part-pick.tsx';
import { woodOfPart } from './wood-of-part.ts';

interface Props {
  parts: readonly Part[];
  seasons: Seasons;
}

/** A part that moves inside something that keeps its size: a panel in grooves, a drawer or a door in its opening. */
export function Gaps({ parts, seasons }: Props) {
  const [chosen, choose] = useState(widestOf(parts)?.id);
  const part = parts.find(({ id }) => id === chosen);
  if (!part) return null;
  const wood = woodOfPart(part);
  return (
    <>
      <PartPick parts={parts} value={part.id} onInput={choose} />
      <PartNote part={part} />
      <GrooveTask key={`groove-${part.id}`} part={part} seasons={seasons} />
      <LengthTask
        key={`opening-${part.id}`}
        title="Drawer front or door"
        name={`opening-1-${part.id}`}
        entries={{
          opening: ['Opening across its grain', part.width],
          least: ['Least gap, both sides', 1],
        }}
        find={(lengths) => seasonalGap({ wood, seasons, ...lengths })}
        show={({ size, gapToday, gapDry, gapWet }) => [
          ['Cut it today to', size],
          ['Gap today, both sides', gapToday],
          ['when dry', gapDry],
          ['when damp', gapWet],
        ]}
      />
    </>
  );
}
