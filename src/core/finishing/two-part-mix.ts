import { badNumber } from '../answer/bad-number.ts';
import { oneStep } from '../answer/one-step.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome, Problem } from '../answer/problem.ts';
import { count, factor, grams, litres, seconds } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';

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
  const parts = { above: 0, most: 1000 };
  const badDensity = (part: 'A' | 'B', density: number | undefined) =>
    density === undefined && by === 'volume'
      ? undefined
      : badNumber(`ratio.density${part}`, `The density of ${part}`, density as number, 'factor', {
          least: 0.5,
          most: 3,
        });
  return (
    badNumber('ratio.a', 'The share of A', a, 'factor', parts) ??
    badNumber('ratio.b', 'The share of B', b, 'factor', parts) ??
    badDensity('A', densityA) ??
    badDensity('B', densityB)
  );
}

/** Litres of B to one litre of A. */
function volumeRatio({ a, b, by, densityA = 1, densityB = 1 }: MixRatio): number {
  return by === 'volume' ? b / a : (b * densityA) / (a * densityB);
}

function mixed(litresA: number, ratio: MixRatio): Mix {
  const litresB = litresA * volumeRatio(ratio);
  return {
    litresA,
    litresB,
    litres: litresA + litresB,
    ...(ratio.densityA !== undefined && { gramsA: litresA * ratio.densityA * 1000 }),
    ...(ratio.densityB !== undefined && { gramsB: litresB * ratio.densityB * 1000 }),
  };
}

function worked(litresA: number, ratio: MixRatio): Worked<Mix> {
  const mix = mixed(litresA, ratio);
  const step = (part: 'A' | 'B', volume: number, mass: number | undefined): WorkingStep => ({
    finds: `part ${part}`,
    by: phrase(`{a} to {b} by ${ratio.by}${mass === undefined ? '' : '; on the scale {mass}'}.`, {
      a: factor(ratio.a),
      b: factor(ratio.b),
      ...(mass !== undefined && { mass: grams(mass) }),
    }),
    gives: litres(volume),
  });
  return {
    value: mix,
    working: {
      steps: [step('A', mix.litresA, mix.gramsA), step('B', mix.litresB, mix.gramsB)],
      holds: phrase('Volumes add up. Too much of either stays soft.'),
      sources: ['label'],
    },
  };
}

/**
 * How much of each part makes a total.
 *
 * @param totalLitres litres of ready mix
 * @param ratio A to B by volume, or by mass with both densities in kg per litre
 * @returns litres of each, grams where a density is known
 * @valid volumes that add up when mixed, 1 ml to 100 litres
 * @errors a ratio of 0, mass without densities, an absurd total
 * @example mixForTotal(0.2, { a: 3, b: 1, by: 'volume' }).value // => { litresA: 0.15, litresB: 0.05 }
 * @source the label's ratio
 */
export function mixForTotal(totalLitres: number, ratio: MixRatio): Outcome<Worked<Mix>> {
  const bad = badRatio(ratio) ?? badNumber('litres', 'The amount', totalLitres, 'litres', { least: 0.001, most: 100 });
  if (bad) return bad;
  return worked(totalLitres / (1 + volumeRatio(ratio)), ratio);
}

/**
 * How much can be mixed from what is left of one part.
 *
 * @param part which part it is
 * @param partLitres litres left of it
 * @param ratio as of `mixForTotal`
 * @returns litres of each, grams where a density is known
 * @valid as `mixForTotal`
 * @errors those of `mixForTotal`
 * @example mixFromPart('B', 0.04, { a: 3, b: 1, by: 'volume' }).value // => { litresA: 0.12, litres: 0.16 }
 * @source the label's ratio
 */
export function mixFromPart(part: 'A' | 'B', partLitres: number, ratio: MixRatio): Outcome<Worked<Mix>> {
  const bad =
    badRatio(ratio) ?? badNumber('litres', `What is left of ${part}`, partLitres, 'litres', { above: 0, most: 100 });
  if (bad) return bad;
  return worked(part === 'A' ? partLitres : partLitres / volumeRatio(ratio), ratio);
}

export interface Batches {
  readonly count: number;
  readonly litresEach: number;
  /** To use one up at the maker's pace. */
  readonly secondsEach: number;
}

/** No batch is planned to its last minute: this share of the pot life is used. An assumption. */
export const potLifeUsed = 0.8;

/**
 * How many equal batches keep each within its pot life.
 *
 * @param totalLitres litres of ready mix
 * @param potLifeSeconds the label's pot life at today's temperature, seconds
 * @param secondsPerLitre the maker's pace
 * @returns batches, litres and seconds of each
 * @valid four fifths of the pot life are used. A large batch heats up and sets sooner than the label says
 * @errors a pot life, pace or total that makes no sense; more than 200 batches
 * @example potLifeBatches(0.6, 2700, 6000).value // => { count: 2, litresEach: 0.3 }
 * @source arithmetic on the label's pot life
 */
export function potLifeBatches(
  totalLitres: number,
  potLifeSeconds: number,
  secondsPerLitre: number,
): Outcome<Worked<Batches>> {
  const bad =
    badNumber('litres', 'The amount', totalLitres, 'litres', { above: 0, most: 100 }) ??
    badNumber('potLifeSeconds', 'The pot life', potLifeSeconds, 'seconds', { least: 60, most: 30 * 86400 }) ??
    badNumber('secondsPerLitre', 'The time for a litre', secondsPerLitre, 'seconds', { above: 0, most: 30 * 86400 });
  if (bad) return bad;
  const usable = potLifeSeconds * potLifeUsed;
  const needed = totalLitres * secondsPerLitre;
  const batches = Math.max(1, Math.ceil(needed / usable - 1e-9));
  const tooMany = badNumber('potLifeSeconds', 'The number of batches', batches, 'count', { most: 200 });
  if (tooMany) return tooMany;
  return {
    value: { count: batches, litresEach: totalLitres / batches, secondsEach: needed / batches },
    working: oneStep(
      'batches',
      phrase('{work} of work over {usable} of pot life, a fifth kept back.', {
        work: seconds(needed),
        usable: seconds(usable),
      }),
      count(batches),
      ['label', 'assumption'],
      phrase('In a flat tray: in bulk it heats up and sets early.'),
    ).working,
  };
}
