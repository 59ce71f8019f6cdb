import { badNumber, badRange } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import { count, percent, seconds } from '../answer/quantity.ts';
import { likely, type Range } from '../answer/range.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { dryingTimeConstant, type MoistureReading } from './drying-fit.ts';

/**
 * - `too-wet`: above what should be glued
 * - `drying`, `gaining`: outside the band, above or below
 * - `settling`: inside the band, not yet shown to be steady
 * - `ready`: inside the band and steady
 */
export type DryingState = 'too-wet' | 'drying' | 'gaining' | 'settling' | 'ready';

export interface DryingVerdict {
  readonly state: DryingState;
  readonly reason: Phrase;
  readonly latest: MoistureReading;
  /** When the wood is expected at the edge of the band, in milliseconds since 1970; undefined when nothing supports a date. */
  readonly expectedAt?: number;
  /** What that date rests on, or why there is none, of wood outside of the band. */
  readonly forecast?: Phrase;
}

export interface DryingInput {
  /** In any order; at in milliseconds since 1970, percent moisture 0 to 100. */
  readonly readings: readonly MoistureReading[];
  /** The band that counts as dry, percent. */
  readonly target: Range;
  /** What the air around the wood holds it at, percent; without it, the middle of the band. */
  readonly equilibrium?: number;
  readonly now: number;
}

const day = 86_400_000;
/** What `ready` asks for (common practice): readings within the band that moved by no more than this over this long. */
const steadyDays = 7;
const steadyWithin = 0.5;
/** Interior work is not glued above this (common practice), or above the band where the band itself is higher. */
const gluingLimit = 12;
/** Further off than this a forecast from a few readings says nothing. */
const forecastLimit = 730 * day;

/**
 * Whether wood is dry enough to work, from readings over time, and when it will be.
 *
 * @param input readings (milliseconds, percent), the target band (percent), the equilibrium of the air (percent), now
 *   (milliseconds)
 * @returns state, reason, the latest reading, and the expected date (milliseconds) with what it rests on
 * @valid readings taken alike (same meter, same depth, corrected for temperature). Ready means: the last reading is in
 *   the band and the readings of at least the last 7 days stay within 0.5 %. The date follows an exponential approach
 *   to the equilibrium; real boards slow down more than that, so take it as the earliest
 * @errors a `Problem` on `readings`, `target` or `equilibrium`
 * @example dryingVerdict({
 *   readings: [
 *     { at: 0, percent: 16 },
 *     { at: 10 * 864e5, percent: 12 },
 *   ],
 *   target: { least: 7, most: 9 },
 *   equilibrium: 8,
 *   now: 10 * 864e5,
 * }).value // => { state: 'drying', expectedAt: 2592000000.0 }
 * @source common practice; the approach is an assumption
 */
export function dryingVerdict(input: DryingInput): Outcome<Worked<DryingVerdict>> {
  const wrong = dryingProblem(input);
  if (wrong) return wrong;
  const { target, equilibrium = likely(target), now } = input;
  const readings = input.readings.toSorted((a, b) => a.at - b.at);
  const latest = readings.at(-1) as MoistureReading;
  const has = percent(latest.percent);
  const band = phrase`the band ${percent(target.least)} to ${percent(target.most)}`;
  const steady = phrase`within ${percent(steadyWithin)} over ${seconds((steadyDays * day) / 1000)}`;
  const limit = Math.max(gluingLimit, target.most);
  const verdict = (state: DryingState, reason: Phrase, when: Forecast = {}): Worked<DryingVerdict> => ({
    value: { state, reason, latest, ...when },
    working: {
      steps: [workingStep('latest moisture', phrase`newest of ${count(readings.length)} readings; ${band}`, has)],
      holds: phrase`Ready: in the band, and ${steady} or longer. A forecast is the earliest likely date.`,
      sources: ['common-practice', 'assumption'],
    },
  });
  const at = (edge: number) => forecast(readings, equilibrium, edge, now);
  if (latest.percent > limit)
    return verdict(
      'too-wet',
      phrase`${has}: interior work is not glued above ${percent(limit)}. It would shrink after the glue has set.`,
      at(target.most),
    );
  if (latest.percent > target.most) return verdict('drying', phrase`${has}, above ${band}.`, at(target.most));
  if (latest.percent < target.least)
    return verdict(
      'gaining',
      phrase`${has}, below ${band}. It will swell: let it take up moisture first.`,
      at(target.least),
    );
  return isSteady(readings, latest)
    ? verdict('ready', phrase`${has}, in ${band}, and steady ${steady} or longer.`)
    : verdict('settling', phrase`${has}, in ${band}. Steady takes readings ${steady}: read again.`);
}

function dryingProblem({ readings, target, equilibrium, now }: DryingInput): Problem | undefined {
  const limits = { least: 0, most: 30 };
  if (readings.length === 0) return problem('readings', 'No reading yet.');
  for (const [index, one] of readings.entries()) {
    const wrong = badNumber(`readings.${index}.percent`, 'The reading', one.percent, 'percent', {
      least: 0,
      most: 100,
    });
    if (wrong) return wrong;
    if (!(one.at <= now)) return problem(`readings.${index}.at`, 'The reading is in the future. Check its date.');
  }
  return (
    badRange('target', 'The target band', target, 'percent', limits) ??
    badNumber('equilibrium', 'The equilibrium moisture', equilibrium ?? target.least, 'percent', limits)
  );
}

/** The newest reading that is old enough opens the window; it and all after it must lie close together. */
function isSteady(readings: readonly MoistureReading[], latest: MoistureReading): boolean {
  const start = readings.findLastIndex((one) => latest.at - one.at >= steadyDays * day);
  if (start < 0) return false;
  const window = readings.slice(start).map((one) => one.percent);
  return Math.max(...window) - Math.min(...window) <= steadyWithin;
}

type Forecast = Pick<DryingVerdict, 'expectedAt' | 'forecast'>;

/** When wood outside of the band comes to the edge of it, in air that holds it at `equilibrium`. */
function forecast(readings: readonly MoistureReading[], equilibrium: number, edge: number, now: number): Forecast {
  const latest = readings.at(-1) as MoistureReading;
  const air = percent(equilibrium);
  if ((equilibrium - edge) * (edge - latest.percent) <= 0)
    return { forecast: phrase`The air holds wood at ${air}: here it never gets into the band. Change the air.` };
  const timeConstant = dryingTimeConstant(readings, equilibrium);
  if (timeConstant === undefined)
    return { forecast: phrase`No date yet: it takes two readings, days apart, moving towards ${air}.` };
  const wait = timeConstant * Math.log((latest.percent - equilibrium) / (edge - equilibrium));
  if (wait > forecastLimit) return { forecast: phrase`Moving too slowly for a date.` };
  const expectedAt = latest.at + wait;
  const pace = phrase`At this pace towards ${air}`;
  const forecast =
    expectedAt > now
      ? phrase`${pace}, the band is about ${seconds((expectedAt - now) / 1000)} away at the earliest.`
      : phrase`${pace} it may be in the band by now: read it again.`;
  return { expectedAt, forecast };
}
