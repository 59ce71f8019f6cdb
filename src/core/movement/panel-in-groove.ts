import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import type { Wood } from './part-movement.ts';
import { seasonalGap } from './seasonal-gap.ts';
import type { Seasons } from './seasons.ts';

export interface GrooveInput {
  readonly wood: Wood;
  readonly seasons: Seasons;
  /** Between the inner edges of the frame, across the panel's grain, mm. */
  readonly opening: number;
  /** Of the groove on each side, mm. */
  readonly depth: number;
}

/** Room that must be left at the bottom of each groove in the dampest season, mm (common practice). */
const spare = 0.5;
/** What must stay in each groove in the driest season, mm (common practice). */
const hold = 3;

export interface PanelInGroove {
  /** What to cut the panel to at today's moisture, mm. */
  readonly width: number;
  /** At the bottom of each groove, with the panel in the middle, mm. */
  readonly gapToday: number;
  readonly gapDry: number;
  readonly gapWet: number;
  /** What of the panel is in each groove in the driest season, mm. */
  readonly heldDry: number;
}

/**
 * How wide to cut a panel that floats in the grooves of a frame, and the gap to leave at today's moisture.
 *
 * @param input wood, moisture today and in the seasons (percent), opening and depth of the grooves (mm)
 * @returns width to cut today, and the gap at the bottom of each groove today and in both seasons, mm
 * @valid a frame whose rails run across the panel's grain, and so don't move; a panel pinned or spaced in the middle
 * @errors a `Problem` on `depth` when the groove is too shallow for the panel to move and still be held; on `opening`,
 *   or as `partMovement`
 * @example panelInGroove({ wood: cherry, seasons, opening: 300, depth: 10 }).value
 *   // => { width: 316.6, gapToday: 1.7 }
 * @source movement by Wood handbook (FPL-GTR-190), chapter 13; spare room and hold are common practice
 */
export function panelInGroove({ wood, seasons, opening, depth }: GrooveInput): Outcome<Worked<PanelInGroove>> {
  const wrong =
    badNumber('opening', 'The opening', opening, 'mm', { above: 0 }) ??
    badNumber('depth', 'The depth', depth, 'mm', { above: 0, most: 100 });
  if (wrong) return wrong;
  const room = opening + 2 * depth;
  // A panel fits between the groove bottoms as a door fits its opening, with the spare room on both sides.
  const fit = seasonalGap({ wood, seasons, opening: room, least: 2 * spare });
  if (isProblem(fit)) return fit;
  const { size, gapToday, gapDry, gapWet } = fit.value;
  const heldDry = depth - Math.max(gapToday, gapDry, gapWet) / 2;
  if (heldDry < hold) {
    return problem(
      'depth',
      phrase`When dry only ${mm(Math.max(0, heldDry))} would hold, less than ${mm(hold)}. Make the groove deeper.`,
    );
  }
  const between: WorkingStep = workingStep(
    'between the groove bottoms',
    phrase`opening ${mm(opening)} + 2 × depth ${mm(depth)}; least gap 2 × ${mm(spare)}`,
    mm(room),
  );
  return {
    value: { width: size, gapToday: gapToday / 2, gapDry: gapDry / 2, gapWet: gapWet / 2, heldDry },
    working: {
      ...fit.working,
      steps: [between, ...fit.working.steps],
      holds: phrase`A panel centred in its grooves. Keep glue and finish out of them.`,
    },
  };
}
