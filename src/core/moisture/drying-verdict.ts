import { badNumber, badRange } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import { count, percent, type Quantity, seconds } from '../answer/quantity.ts';
import { likely, type Range } from '../answer/range.ts';
import type { Worked } from '../answer/worked.ts';
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
  /** What that date rests on, or why there is none. */
  readonly forecast: Phrase;
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
  const { target, equilibrium = likely(target) } = input;
  const readings = input.readings.toSorted((a, b) => a.at - b.at);
  const latest = readings.at(-1) as MoistureReading;
  const state = stateOf(readings, latest, target);
  const said = {
    latest: percent(latest.percent),
    least: percent(target.least),
    most: percent(target.most),
    limit: percent(Math.max(gluingLimit, target.most)),
    time: seconds((steadyDays * day) / 1000),
    within: percent(steadyWithin),
  };
  return {
    value: {
      state,
      reason: reasons[state](said),
      latest,
      ...forecastOf(state, readings, { ...input, equilibrium }),
    },
    working: {
      steps: [
        {
          finds: 'latest moisture',
          by: phrase`newest of ${count(readings.length)} readings; the band is ${said.least} to ${said.most}`,
          gives: percent(latest.percent),
        },
      ],
      holds: phrase`Ready: in the band, and within ${said.within} over ${said.time} or longer. A forecast is the earliest likely date.`,
      sources: ['common-practice', 'assumption'],
    },
  };
}

/** Every quantity that the reasons may speak of. */
type Said = Readonly<Record<'latest' | 'least' | 'most' | 'limit' | 'time' | 'within', Quantity>>;

const reasons: Record<DryingState, (said: Said) => Phrase> = {
  'too-wet': ({ latest, limit }) =>
    phrase`${latest}: interior work is not glued above ${limit}. It would shrink after the glue has set.`,
  drying: ({ latest, least, most }) => phrase`${latest}, above the band ${least} to ${most}.`,
  gaining: ({ latest, least, most }) =>
    phrase`${latest}, below the band ${least} to ${most}. It will swell: let it take up moisture first.`,
  settling: ({ latest, least, most, within, time }) =>
    phrase`${latest}, in the band ${least} to ${most}. Steady takes readings within ${within} over ${time}.`,
  ready: ({ latest, least, most, within, time }) =>
    phrase`${latest}, in the band ${least} to ${most}, and steady within ${within} over ${time} or longer.`,
};

function dryingProblem({ readings, target, equilibrium, now }: DryingInput): Problem | undefined {
  const limits = { least: 0, most: 30 };
  if (readings.length === 0) return problem('readings', 'No reading yet.');
  for (const [index, one] of readings.entries()) {
    const wrong =
      badNumber(`readings.${index}.percent`, 'The reading', one.percent, 'percent', { least: 0, most: 100 }) ??
      badNumber(`readings.${index}.at`, 'The time of the reading', one.at, 'count', {}) ??
      (one.at > now ? problem(`readings.${index}.at`, 'The reading is in the future. Check its date.') : undefined);
    if (wrong) return wrong;
  }
  return (
    badRange('target', 'The target band', target, 'percent', limits) ??
    (equilibrium === undefined
      ? undefined
      : badNumber('equilibrium', 'The equilibrium moisture', equilibrium, 'percent', limits))
  );
}

function stateOf(readings: readonly MoistureReading[], latest: MoistureReading, target: Range): DryingState {
  if (latest.percent > Math.max(gluingLimit, target.most)) return 'too-wet';
  if (latest.percent > target.most) return 'drying';
  if (latest.percent < target.least) return 'gaining';
  return isSteady(readings, latest) ? 'ready' : 'settling';
}

/** The newest reading that is old enough opens the window; it and all after it must lie close together. */
function isSteady(readings: readonly MoistureReading[], latest: MoistureReading): boolean {
  const start = readings.findLastIndex((one) => latest.at - one.at >= steadyDays * day);
  if (start < 0) return false;
  const window = readings.slice(start).map((one) => one.percent);
  return Math.max(...window) - Math.min(...window) <= steadyWithin;
}

function forecastOf(
  state: DryingState,
  readings: readonly MoistureReading[],
  { target, equilibrium, now }: Required<DryingInput>,
): Pick<DryingVerdict, 'expectedAt' | 'forecast'> {
  const latest = readings.at(-1) as MoistureReading;
  if (state === 'ready') return { expectedAt: latest.at, forecast: phrase`It has arrived.` };
  if (state === 'settling') {
    return { forecast: phrase`Read again a week after the first in the band.` };
  }
  const air = percent(equilibrium);
  const edge = state === 'gaining' ? target.least : target.most;
  if (state === 'gaining' ? equilibrium <= edge : equilibrium >= edge) {
    return { forecast: phrase`The air holds wood at ${air}: here it never gets into the band. Change the air.` };
  }
  const timeConstant = dryingTimeConstant(readings, equilibrium);
  if (timeConstant === undefined) {
    return { forecast: phrase`No date yet: it takes two readings, days apart, moving towards ${air}.` };
  }
  const wait = timeConstant * Math.log((latest.percent - equilibrium) / (edge - equilibrium));
  if (wait > forecastLimit) return { forecast: phrase`Moving too slowly for a date.` };
  const away = seconds(Math.max(0, latest.at + wait - now) / 1000);
  return {
    expectedAt: latest.at + wait,
    forecast: phrase`At this pace towards ${air}, the band is about ${away} away at the earliest.`,
  };
}
