import { type Problem, problem, within } from '../answer/problem.ts';
import type { Working } from '../answer/worked.ts';
import { moistureProblem } from '../moisture/moisture-problem.ts';

/** The moisture of wood in the driest and in the dampest season where the piece lives, percent. */
export interface SeasonMoisture {
  readonly dry: number;
  readonly wet: number;
}

/** The same with what the wood reads today. */
export interface Seasons extends SeasonMoisture {
  readonly today: number;
}

/** The same working, each of its steps named for the season. */
export const inSeason = (season: string, working: Working): Working => ({
  ...working,
  steps: working.steps.map((step) => ({ ...step, finds: `${step.finds}, ${season} season` })),
});

/** Why seasons can't be worked with, if they can't. */
export function seasonsProblem(seasons: Seasons): Problem | undefined {
  const wrong =
    moistureProblem('today', seasons.today) ??
    moistureProblem('dry', seasons.dry) ??
    moistureProblem('wet', seasons.wet) ??
    (seasons.dry > seasons.wet ? problem('wet', 'The dry season is the damper one. Swap the two.') : undefined);
  return wrong && within(wrong, 'seasons');
}
