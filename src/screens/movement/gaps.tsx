import { useState } from 'preact/hooks';
import { panelInGroove } from '../../core/movement/panel-in-groove.ts';
import { seasonalGap } from '../../core/movement/seasonal-gap.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Part } from '../../store/records/piece.ts';
import { LengthTask } from './length-task.tsx';
import { PartPick, widestOf } from './part-pick.tsx';
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
      <LengthTask
        key={`groove-${part.id}`}
        title="Panel in grooves"
        name={`groove-1-${part.id}`}
        entries={{ opening: ['Between the frame’s inner edges', part.width], depth: ['Depth of a groove', 10] }}
        find={(lengths) => panelInGroove({ wood, seasons, ...lengths })}
        show={({ width, gapToday, gapDry, gapWet, heldDry }) => [
          ['Cut it today to', width],
          ['Gap in each groove today', gapToday],
          ['in the dry season', gapDry],
          ['in the damp season', gapWet],
          ['Held in each groove when dry', heldDry],
        ]}
      />
      <LengthTask
        key={`opening-${part.id}`}
        title="Drawer front or door"
        name={`opening-1-${part.id}`}
        entries={{
          opening: ['Opening across its grain', part.width],
          least: ['Least gap, both sides together', 1],
        }}
        find={(lengths) => seasonalGap({ wood, seasons, ...lengths })}
        show={({ size, gapToday, gapDry, gapWet }) => [
          ['Make it today', size],
          ['Gap today, both sides together', gapToday],
          ['in the dry season', gapDry],
          ['in the damp season', gapWet],
        ]}
      />
    </>
  );
}
