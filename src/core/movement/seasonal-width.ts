import { joined } from '../answer/joined.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome } from '../answer/problem.ts';
import type { Worked } from '../answer/worked.ts';
import { dimensionalChange } from './dimensional-change.ts';
import { partMovement, type Wood } from './part-movement.ts';
import type { Seasons } from './seasons.ts';

const daysInYear = 365;
/** Every five days: 73 points and the first again, smooth enough for a small chart. */
const stepDays = 5;
/** Days since 1 January on which wood is dampest: 15 August. */
const dampest = 226;

export interface WidthOnDay {
  /** Days since 1 January, 0 to 365. */
  readonly day: number;
  /** mm */
  readonly width: number;
}

/**
 * A part's width through the year, for a small chart.
 *
 * @param wood the species' figures and the cut
 * @param width across the grain today, mm
 * @param seasons moisture today, in the dry and in the wet season, percent
 * @returns a point every five days: days since 1 January and mm. Today's width need not lie on the curve
 * @valid as a picture of the year. Moisture is taken to swing as one sine wave between the two seasons, dampest in mid
 *   August and driest half a year on, as in a house heated in the northern winter
 * @errors a `Problem` as `partMovement`
 * @example [9, 45].map((at) => seasonalWidth(cherry, 400, seasons).value[at].width)
 *   // => [398.0, 403.0]
 * @source Wood handbook (FPL-GTR-190), chapter 13; the sine wave is an assumption
 */
export function seasonalWidth(wood: Wood, width: number, seasons: Seasons): Outcome<Worked<readonly WidthOnDay[]>> {
  const ends = partMovement(wood, width, seasons);
  if (isProblem(ends)) return ends;
  const { dry, wet } = seasons;
  const points: WidthOnDay[] = [];
  for (let day = 0; day <= daysInYear; day += stepDays) {
    const swing = (Math.cos((2 * Math.PI * (day - dampest)) / daysInYear) + 1) / 2;
    // Held below the end, because rounding may carry the sum past it, and past the range of the figures.
    const there = dimensionalChange({
      ...wood,
      width,
      from: seasons.today,
      to: Math.min(dry + swing * (wet - dry), wet),
    });
    if (isProblem(there)) return there;
    points.push({ day, width: width + there.value.change });
  }
  return {
    value: points,
    working: joined(ends.working, {
      steps: [],
      holds: phrase`Moisture swinging as one wave a year. A finished or wide part lags and moves less.`,
      sources: ['assumption'],
    }),
  };
}
