import { useState } from 'preact/hooks';
import { isProblem } from '../../core/answer/problem.ts';
import { partMovement } from '../../core/movement/part-movement.ts';
import { seasonalGap } from '../../core/movement/seasonal-gap.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Part } from '../../store/records/piece.ts';
import { FiguresNote } from '../../ui/figures-note.tsx';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import { GrooveTask } from './groove-task.tsx';
import { LengthTask } from './length-task.tsx';
import { OpenRow } from './open-row.tsx';
import { woodOfPart } from './wood-of-part.ts';
import { WoodTrouble } from './wood-trouble.tsx';
import { YearChart } from './year-chart.tsx';

/**
 * How far every part moves across its grain, both ways from today. A tap shows its year, and the room that it needs inside
 * something that keeps its size; the widest, which moves most, is open at first.
 */
export function MovingParts({ parts, seasons }: { parts: readonly Part[]; seasons: Seasons }) {
  const [open, setOpen] = useState(parts.toSorted((a, b) => b.width - a.width)[0]?.id);
  return (
    <ul class="parts">
      {parts.map((part) => {
        const moved = partMovement(woodOfPart(part), part.width, seasons);
        const short = isProblem(moved) ? (
          <Say phrase={moved.message} />
        ) : (
          <>
            shrinks <Length mm={moved.value.shrink} />, swells <Length mm={moved.value.swell} />
          </>
        );
        return (
          <OpenRow key={part.id} id={part.id} title={part.name} short={short} open={open} onOpen={setOpen}>
            {isProblem(moved) ? (
              <WoodTrouble of={moved} />
            ) : (
              <>
                <YearChart part={part} seasons={seasons} />
                <FiguresNote estimated={moved.value.estimated} sources={moved.working.sources} />
                <GrooveTask part={part} seasons={seasons} />
                <OpeningTask part={part} seasons={seasons} />
              </>
            )}
          </OpenRow>
        );
      })}
    </ul>
  );
}

/** A drawer or a door in its opening. */
function OpeningTask({ part, seasons }: { part: Part; seasons: Seasons }) {
  const wood = woodOfPart(part);
  return (
    <LengthTask
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
  );
}
