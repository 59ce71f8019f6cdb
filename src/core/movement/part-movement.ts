import { joined } from '../answer/joined.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked, Working } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { Cut } from './cut.ts';
import { type DimensionalChange, dimensionalChange } from './dimensional-change.ts';
import type { MovementFigures } from './movement-figures.ts';
import type { Moves } from './moves.ts';
import { inSeason, type Seasons, seasonsProblem } from './seasons.ts';

/** What a part is made of, as far as its movement goes. */
export interface Wood {
  readonly figures: MovementFigures;
  readonly cut: Cut;
}

/** How a part's size across the grain changes from today's; all in mm. */
export interface PartMovement extends Moves {
  /** Change to the dry and to the wet season, swelling positive. */
  readonly dryChange: number;
  readonly wetChange: number;
  /** Whether it rests on a guess from the volume's shrinkage. */
  readonly estimated: boolean;
}

/**
 * How far a part moves both ways from today's size, in the dry and in the wet season.
 *
 * @param wood the species' figures and the cut
 * @param width across the grain today, mm
 * @param seasons moisture today, in the dry and in the wet season, percent
 * @returns both changes, the most it shrinks and swells, all in mm
 * @valid as `dimensionalChange`, whose figure is chosen for each season by its range
 * @errors a `Problem` on `width`, `cut`, `species` or `seasons`
 * @example partMovement(cherry, 400, { today: 8, dry: 6, wet: 11 }).value // => { shrink: 1.98, swell: 2.98 }
 * @source Wood handbook (FPL-GTR-190), chapter 13
 */
export function partMovement(wood: Wood, width: number, seasons: Seasons): Outcome<Worked<PartMovement>> {
  const wrong = seasonsProblem(seasons);
  if (wrong) return wrong;
  const dry = dimensionalChange({ ...wood, width, from: seasons.today, to: seasons.dry });
  if (isProblem(dry)) return dry;
  const wet = dimensionalChange({ ...wood, width, from: seasons.today, to: seasons.wet });
  if (isProblem(wet)) return wet;
  const dryChange = dry.value.change;
  const wetChange = wet.value.change;
  return {
    value: {
      dryChange,
      wetChange,
      // Both seasons in both, because two equations whose figures disagree may turn the order of the seasons round.
      shrink: Math.max(0, -dryChange, -wetChange),
      swell: Math.max(0, dryChange, wetChange),
      estimated: dry.value.rate.estimated || wet.value.rate.estimated,
    },
    working: joined(inSeason('dry', widthIn(width, dry)), inSeason('damp', widthIn(width, wet))),
  };
}

function widthIn(width: number, { value: { change }, working }: Worked<DimensionalChange>): Working {
  const by = phrase`width ${mm(width)} today + change ${mm(change)}`;
  return { ...working, steps: [...working.steps, workingStep('width', by, mm(width + change))] };
}
