import { panelInGroove } from '../../core/movement/panel-in-groove.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Part } from '../../store/records/piece.ts';
import { LengthTask } from './length-task.tsx';
import { woodOfPart } from './wood-of-part.ts';

const usualDepth = 10;

/** How wide to cut a panel that floats in grooves, and the room that it has there. */
export function GrooveTask({ part, seasons }: { part: Part; seasons: Seasons }) {
  const wood = woodOfPart(part);
  return (
    <LengthTask
      title="Panel in grooves"
      name={`groove-2-${part.id}`}
      entries={{
        opening: ['Frame opening', Math.max(0, part.width - 2 * usualDepth)],
        depth: ['Depth of a groove', usualDepth],
      }}
      find={(lengths) => panelInGroove({ wood, seasons, ...lengths })}
      show={({ width, gapToday, gapDry, gapWet, heldDry }) => [
        ['Cut it today to', width],
        ['Gap in each groove today', gapToday],
        ['when dry', gapDry],
        ['when damp', gapWet],
        ['Held when dry', heldDry],
      ]}
    />
  );
}
