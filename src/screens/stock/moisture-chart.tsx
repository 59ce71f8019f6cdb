import { formatDecimals } from '../../core/answer/format-number.ts';
import type { Range } from '../../core/answer/range.ts';
import { day as dayOf } from '../../ui/day.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';

interface Props {
  /** In order of time, corrected, percent. */
  readings: readonly { readonly at: number; readonly percent: number }[];
  band: Range;
  /** When the band is expected to be reached; 0 where it isn't known. */
  expectedAt?: number;
}

const size = { width: 328, height: 190 };
const inside = { left: 34, right: 318, top: 12, bottom: 162 };
const day = 86_400_000;

/** The readings over time, against the band that counts as dry. */
export function MoistureChart({ readings, band, expectedAt = 0 }: Props) {
  const first = readings[0]?.at ?? 0;
  const latest = readings.at(-1);
  if (!latest) return null;
  const end = Math.max(latest.at, expectedAt, first + day);
  const most = Math.ceil(Math.max(band.most, ...readings.map(({ percent }) => percent)) / 5) * 5;
  const x = (at: number) => inside.left + ((at - first) / (end - first)) * (inside.right - inside.left);
  const y = (percent: number) => inside.bottom - (percent / most) * (inside.bottom - inside.top);
  const line = readings.map(
    ({ at, percent }, n) => `${n === 0 ? 'M' : 'L'}${x(at).toFixed(1)} ${y(percent).toFixed(1)}`,
  );
  const edge = latest.percent > band.most ? band.most : band.least;
  const say = (percent: number) => `${formatDecimals(percent, 1)}%`;
  const alternative = `Moisture from ${dayOf(first)} to ${dayOf(latest.at)}: ${readings
    .map(({ percent }) => say(percent))
    .join(', ')}. The band is ${say(band.least)} to ${say(band.most)}.`;
  return (
    <figure>
      <Drawing width={size.width} height={size.height} alternative={alternative}>
        {(hatch) => (
          <>
            <rect
              x={inside.left}
              y={y(band.most)}
              width={inside.right - inside.left}
              height={y(band.least) - y(band.most)}
              fill={hatch.longGrain}
              stroke="var(--line)"
            />
            <path class="outline" d={`M${inside.left} ${inside.top}V${inside.bottom}H${inside.right}`} />
            {[0, band.least, band.most, most].map((percent) => (
              <text x={inside.left - 5} y={y(percent) + 4} font-size="11" text-anchor="end">
                {formatDecimals(percent, 0)}
              </text>
            ))}
            {expectedAt > latest.at && (
              <path
                class="outline"
                stroke-dasharray="3 4"
                d={`M${x(latest.at)} ${y(latest.percent)}L${x(expectedAt)} ${y(edge)}`}
              />
            )}
            <path class="outline" stroke-width="2" d={line.join('')} />
            {readings.map(({ at, percent }) => (
              <circle cx={x(at)} cy={y(percent)} r="4.5" fill="var(--ink)" />
            ))}
            <text x={inside.left} y={size.height - 8} font-size="12">
              {dayOf(first)}
            </text>
            <text x={inside.right} y={size.height - 8} font-size="12" text-anchor="end">
              {dayOf(end)}
            </text>
          </>
        )}
      </Drawing>
      <figcaption class="soft small">Hatched: dry enough for where the piece will live.</figcaption>
    </figure>
  );
}
