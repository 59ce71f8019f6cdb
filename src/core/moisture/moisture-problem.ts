import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Problem, problem } from '../answer/problem.ts';
import { percent } from '../answer/quantity.ts';

/** Fibre saturation as the handbook's shrinkage equation takes it, in percent: above it wood neither swells nor shrinks. */
const fibreSaturation = 30;

/**
 * Why a moisture content can't be worked with, or `undefined` when it can: it must lie from 0 to 30 percent.
 *
 * @param field of the problem
 * @param moisture percent
 * @returns the problem, or undefined when it can be worked with
 * @valid moisture that moves wood: up to fibre saturation
 * @example moistureProblem('from', 35) // => { field: 'from' }
 * @source fibre saturation at 30 %, Wood handbook (FPL-GTR-190), Eq. 13-3
 */
export function moistureProblem(field: string, moisture: number): Problem | undefined {
  if (moisture > fibreSaturation && Number.isFinite(moisture)) {
    return problem(
      field,
      phrase`${percent(moisture)} is above fibre saturation, where wood neither swells nor shrinks. Enter at most ${percent(fibreSaturation)}.`,
    );
  }
  return badNumber(field, 'The moisture content', moisture, 'percent', { least: 0 });
}
