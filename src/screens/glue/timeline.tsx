import { routeTo } from '../../app/routes.ts';
import type { StageTimes } from '../../core/gluing/day-plan.ts';
import { clockTime } from '../../ui/clock-time.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { type DayEvent, mergeEvents } from './timeline-events.ts';

interface Props {
  times: readonly StageTimes[];
  running: ReadonlySet<string>;
  now: number;
}

const width = 340;
const row = 20;
/** What can be kept in mind; the rest is a tap away. */
const shownFirst = 8;

/** When what is done, in order; and the same drawn to scale: clamps hatched, rest open. */
export function Timeline({ times, running, now }: Props) {
  const events = mergeEvents(times, running);
  const [first] = events;
  return (
    <>
      {first && (
        <p class={first.at <= now ? 'answer now' : 'answer wait'}>
          <span class="soft">{first.at <= now ? 'Now' : clockTime(first.at, now)}</span>
          <span class="figure words">
            {first.does} {first.name}
          </span>
        </p>
      )}
      <Events events={events.slice(0, shownFirst)} now={now} />
      <details class="card">
        <summary>All, along the clock</summary>
        <Bars times={times} now={now} />
        <Events events={events.slice(shownFirst)} now={now} />
      </details>
    </>
  );
}

function Events({ events, now }: { events: readonly DayEvent[]; now: number }) {
  return (
    <ol class="rows">
      {events.map(({ at, does, name, id }) => (
        <li>
          <span>
            {does} <a href={routeTo('glue', id.split(':')[0])}>{name}</a>
          </span>
          <span class="small">{at <= now ? 'now' : clockTime(at, now)}</span>
        </li>
      ))}
    </ol>
  );
}

function Bars({ times, now }: Pick<Props, 'times' | 'now'>) {
  const end = Math.max(...times.map(({ readyAt }) => readyAt));
  const scale = width / Math.max(1, end - now);
  return (
    <Drawing
      width={width}
      height={times.length * row * 2 + 16}
      alternative={times
        .map(
          (one) =>
            `${one.name}: in clamps until ${clockTime(one.unclampAt, now)}, ready ${clockTime(one.readyAt, now)}`,
        )
        .join('. ')}
    >
      {(hatch) => (
        <>
          {times.map(({ name, from, unclampAt, readyAt }, at) => {
            const y = at * row * 2;
            const x = (from - now) * scale;
            const clamps = Math.max(2, (unclampAt - from) * scale);
            return (
              <>
                <text x="0" y={y + 13} font-size="12">
                  {name}
                </text>
                <rect class="wood" x={x} y={y + row} width={Math.max(2, (readyAt - from) * scale)} height="12" />
                <rect x={x} y={y + row} width={clamps} height="12" fill={hatch.waste} />
                <rect class="outline" x={x} y={y + row} width={clamps} height="12" />
              </>
            );
          })}
          <text x="0" y={times.length * row * 2 + 12} font-size="12">
            Hatched: in the clamps.
          </text>
        </>
      )}
    </Drawing>
  );
}
