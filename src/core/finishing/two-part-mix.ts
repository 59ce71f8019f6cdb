import { badNumber, firstBad } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome, Problem } from '../answer/problem.ts';
import { count, factor, litres, seconds } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

/** How two parts go together: `a` of A to `b` of B. */
export interface MixRatio {
  readonly a: number;
  readonly b: number;
  readonly by: 'volume' | 'mass';
  /** kg per litre; needed to turn mass into volume. */
  readonly densityA?: number;
  readonly densityB?: number;
}

export interface Mix {
  readonly litresA: number;
  readonly litresB: number;
  readonly litres: number;
  /** Grams, where the densities are known. */
  readonly gramsA?: number;
  readonly gramsB?: number;
}

function badRatio({ a, b, by, densityA, densityB }: MixRatio): Problem | undefined {
  const share = { above: 0, most: 1000 };
  const density = { least: 0.5, most: 3 };
  const unknown = by === 'volume' ? 1 : Number.NaN;
  return firstBad([
    ['ratio.a', 'The share of A', a, 'factor', share],
    ['ratio.b', 'The share of B', b, 'factor', share],
    ['ratio.densityA', 'The density of A', densityA ?? unknown, 'factor', density],
    ['ratio.densityB', 'The density of B', densityB ?? unknown, 'factor', density],
  ]);
}

/** Litres of B to one litre of A. */
function volumeRatio({ a, b, by, densityA = 1, densityB = 1 }: MixRatio): number {
  return by === 'volume' ? b / a : (b * densityA) / (a * densityB);
}

/**
 * How much of each part goes together.
 *
 * @param of what is given: all that is mixed, or what there is of one part
 * @param given litres of it
 * @param ratio A to B by volume, or by mass with both densities in kg per litre
 * @returns litres of each, grams where a density is known
 * @valid volumes that add up when mixed, up to 100 litres
 * @errors a ratio of 0, mass without densities, an absurd amount
 * @example mixFor('all', 0.2, { a: 3, b: 1, by: 'volume' }).value // => { litresA: 0.15, litresB: 0.05 }
 * @example mixFor('B', 0.04, { a: 3, b: 1, by: 'volume' }).value // => { litresA: 0.12, litres: 0.16 }
 * @source the label's ratio
 */
export function mixFor(of: 'all' | 'A' | 'B', given: number, ratio: MixRatio): Outcome<Worked<Mix>> {
  const bad = badRatio(ratio) ?? badNumber('litres', 'The amount', given, 'litres', { above: 0, most: 100 });
  if (bad) return bad;
  const { a, b, by, densityA, densityB } = ratio;
  const perLitreA = volumeRatio(ratio);
  const litresA = given / { all: 1 + perLitreA, A: 1, B: perLitreA }[of];
  const litresB = litresA * perLitreA;
  const weighed = by === 'mass' && phrase`, at ${factor(densityA ?? 1)} and ${factor(densityB ?? 1)} kg/L`;
  const together = phrase`${factor(a)} to ${factor(b)} by ${by}${weighed || ''}, of ${litres(given)} ${of === 'all' ? 'in all' : of}.`;
  return {
    value: {
      litresA,
      litresB,
      litres: litresA + litresB,
      ...(densityA && { gramsA: litresA * densityA * 1000 }),
      ...(densityB && { gramsB: litresB * densityB * 1000 }),
    },
    working: {
      steps: [workingStep('part A', together, litres(litresA)), workingStep('part B', together, litres(litresB))],
      holds: phrase`Volumes add up. Too much of either stays soft.`,
      sources: ['label'],
    },
  };
}

/** No batch is planned to its last minute: this share of the pot life is used. An assumption. */
export const potLifeUsed = 0.8;

/**
 * How many equal batches keep each within its pot life.
 *
 * @param workSeconds what the maker needs to use all of it up, seconds
 * @param potLifeSeconds the label's pot life at today's temperature, seconds
 * @returns a number of batches
 * @valid four fifths of the pot life are used. A large batch heats up and sets sooner than the label says
 * @errors a time that makes no sense; more than 200 batches
 * @example potLifeBatches(3600, 2700) // => { value: 2 }
 * @source arithmetic on the label's pot life
 */
export function potLifeBatches(workSeconds: number, potLifeSeconds: number): Outcome<Worked> {
  const longest = 30 * 86400;
  const usable = potLifeSeconds * potLifeUsed;
  const batches = Math.max(1, Math.ceil(workSeconds / usable - 1e-9));
  const bad = firstBad([
    ['workSeconds', 'The work', workSeconds, 'seconds', { above: 0, most: longest }],
    ['potLifeSeconds', 'The pot life', potLifeSeconds, 'seconds', { least: 60, most: longest }],
    ['potLifeSeconds', 'The number of batches', batches, 'count', { most: 200 }],
  ]);
  if (bad) return bad;
  return oneStep(
    'batches',
    phrase`${seconds(workSeconds)} of work over ${seconds(usable)} of pot life, a fifth kept back.`,
    count(batches),
    ['label', 'assumption'],
    phrase`In a flat tray: in bulk it heats up and sets early.`,
  );
}
