import { formatQuantity } from '../../core/answer/format-quantity.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { seasonalWidth } from '../../core/movement/seasonal-width.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Part } from '../../store/records/piece.ts';
import { Answer } from '../../ui/answer.tsx';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { units } from '../../ui/units.ts';
import { woodOfPart } from './wood-of-part.ts';
import { dayOfYear, placeInYear } from './year-path.ts';

const size = { width: 320, height: 170 };
const frame = { left: 10, right: 310, top: 26, bottom: 130 };
const months = [...'JFMAMJJASOND'];

/** A part's width through the year, and where it stands today. */
export function YearChart({ part, seasons }: { part: Part; seasons: Seasons }) {
  const year = seasonalWidth(woodOfPart(part), part.width, seasons);
  if (isProblem(year)) return <Trouble of={year} />;
  const today = { day: dayOfYear(new Date()), width: part.width };
  const place = placeInYear([...year.value, today], frame);
  const widths = year.value.map(({ width }) => width);
  const least = Math.min(...widths);
  const most = Math.max(...widths);
  const say = (width: number) => formatQuantity(mm(width), units.value);
  const line = year.value.map(place).map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`);
  const now = place(today);
  return (
    <>
      <Answer
        label={`${part.name} moves in a year by`}
        of={mm(most - least)}
        facts={[
          ['Today', mm(today.width)],
          ['Narrowest', mm(least)],
          ['Widest', mm(most)],
        ]}
        working={year.working}
      />
      <Drawing
        width={size.width}
        height={size.height}
        alternative={`Width of ${part.name}, January to December: ${say(least)} to ${say(most)}, today ${say(today.width)}.`}
      >
        {() => [
          <path class="thin" d={`M${frame.left} ${frame.bottom + 6}H${frame.right}`} />,
          ...months.map((month, at) => (
            <text
              x={frame.left + ((frame.right - frame.left) * (at + 0.5)) / 12}
              y={frame.bottom + 24}
              font-size="12"
              text-anchor="middle"
            >
              {month}
            </text>
          )),
          <path class="outline" stroke-width="2" d={`M${line.join('L')}`} />,
          <path
            class="signal"
            stroke-width="2"
            stroke-dasharray="4 3"
            d={`M${now.x} ${frame.top - 8}V${frame.bottom + 6}`}
          />,
          <circle class="signal" fill="var(--sheet)" stroke-width="3" cx={now.x} cy={now.y} r="5" />,
          <text
            x={now.x}
            y={frame.top - 12}
            font-size="12"
            text-anchor={now.x < 60 ? 'start' : now.x > 260 ? 'end' : 'middle'}
          >
            today
          </text>,
        ]}
      </Drawing>
      <p class="soft small">Assumed dampest in mid August; heights stretched. A finish only slows movement.</p>
    </>
  );
}
