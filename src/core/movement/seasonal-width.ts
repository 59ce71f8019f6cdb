import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome } from '../answer/problem.ts';
import type { Worked } from '../answer/worked.ts';
import { dimensionalChange } from './dimensional-change.ts';
import { partMovement, type Wood } from './part-movement.ts';
import type { Seasons } from './seasons.ts';

const daysInYear = 365;
/** Every five days: 73 points and the first again, smooth enough for a small chart. */
const stepDays = 5;

export interface WidthOnDay {
  /** Days since 1 January, 0 to 365. */
  readonly day: number;
  readonly percent: number;
  /** mm */
  readonly width: number;
}

export interface SeasonalWidth {
  readonly points: readonly WidthOnDay[];
  /** Where the part stands now: on its day, at the moisture it reads, which need not lie on the curve. */
  readonly today: WidthOnDay;
}

export interface SeasonalWidthInput {
  readonly wood: Wood;
  /** Across the grain today, mm. */
  readonly width: number;
  readonly seasons: Seasons;
  /** Days since 1 January. */
  readonly today: number;
  /** Days since 1 January on which wood is dampest; 15 August unless told otherwise. */
  readonly dampest?: number;
}

/**
 * A part's width through the year, for a small chart.
 *
 * @param input wood, width today in mm, moisture today and in both seasons in percent, the day of today and of the
 *   dampest time, in days since 1 January
 * @returns a point every five days (day, percent, mm) and today's
 * @valid as a picture of the year. Moisture is taken to swing as one sine wave between the two seasons, dampest in mid
 *   August and driest half a year on, as in a house heated in the northern winter
 * @errors a `Problem` on `today`, `dampest`, or as `partMovement`
 * @example [9, 45].map((at) => seasonalWidth({ wood: cherry, width: 400, seasons, today: 100 }).value.points[at].width)
 *   // => [398.0, 403.0]
 * @source Wood handbook (FPL-GTR-190), chapter 13; the sine wave is an assumption
 */
export function seasonalWidth(input: SeasonalWidthInput): Outcome<Worked<SeasonalWidth>> {
  const { wood, width, seasons, today, dampest = 226 } = input;
  const dayLimits = { least: 0, most: daysInYear };
  const wrong =
    badNumber('today', 'The day', today, 'count', dayLimits) ??
    badNumber('dampest', 'The dampest day', dampest, 'count', dayLimits);
  if (wrong) return wrong;
  const ends = partMovement(wood, width, seasons);
  if (isProblem(ends)) return ends;
  const points: WidthOnDay[] = [];
  for (let day = 0; day <= daysInYear; day += stepDays) {
    const swing = Math.cos((2 * Math.PI * (day - dampest)) / daysInYear);
    // Clamped because rounding may carry the sum past the ends, and past the range of the figures.
    const percent = Math.min(
      Math.max((seasons.dry + seasons.wet) / 2 + (swing * (seasons.wet - seasons.dry)) / 2, seasons.dry),
      seasons.wet,
    );
    const there = dimensionalChange({ ...wood, width, from: seasons.today, to: percent });
    if (isProblem(there)) return there;
    points.push({ day, percent, width: width + there.value.change });
  }
  return {
    value: { points, today: { day: today, percent: seasons.today, width } },
    working: {
      ...ends.working,
      holds: phrase('Moisture swinging as one wave a year. A finished or wide part lags and moves less.'),
      sources: [...new Set([...ends.working.sources, 'assumption' as const])],
    },
  };
}
