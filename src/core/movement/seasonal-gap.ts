import { badNumber } from '../answer/bad-number.ts';
import { joined } from '../answer/joined.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { widestPart } from './dimensional-change.ts';
import { partMovement, type Wood } from './part-movement.ts';
import type { Seasons } from './seasons.ts';

export interface GapInput {
  readonly wood: Wood;
  readonly seasons: Seasons;
  /** That the drawer or door sits in, across its grain, mm. */
  readonly opening: number;
  /** Over both sides together, that must be left in the dampest season, mm; 1 unless told otherwise. */
  readonly least?: number;
}

export interface SeasonalGap {
  /** What to make the drawer or door today, across its grain, mm. */
  readonly size: number;
  /** Over both sides together, mm. */
  readonly gapToday: number;
  readonly gapDry: number;
  readonly gapWet: number;
}

/**
 * How much gap to leave today around a drawer or a solid door, so that it neither sticks when damp nor gapes when dry.
 *
 * @param input wood, moisture today and in the seasons (percent), opening (mm), least gap in the dampest season (mm)
 * @returns the size to make it today and the gap today and in both seasons, mm, both sides together
 * @valid an opening that keeps its size across the drawer's or door's grain: sides or stiles whose grain runs that way
 * @errors a `Problem` on `opening`, `least`, or as `partMovement`
 * @example seasonalGap({ wood: cherry, seasons, opening: 150 }).value
 *   // => { size: 147.9, gapToday: 2.1, gapDry: 2.8, gapWet: 1.0 }
 * @source movement by Wood handbook (FPL-GTR-190), chapter 13; the least gap is common practice
 */
export function seasonalGap({ wood, seasons, opening, least = 1 }: GapInput): Outcome<Worked<SeasonalGap>> {
  const wrong =
    badNumber('opening', 'The opening', opening, 'mm', { above: 0, most: widestPart }) ??
    badNumber('least', 'The least gap', least, 'mm', { least: 0, most: opening / 2 });
  if (wrong) return wrong;
  const trial = partMovement(wood, opening, seasons);
  if (isProblem(trial)) return trial;
  const { swell, dryChange, wetChange } = trial.value;
  const size = (opening - least) / (1 + swell / opening);
  const gap = (change: number): number => opening - size * (1 + change / opening);
  return {
    value: { size, gapToday: gap(0), gapDry: gap(dryChange), gapWet: gap(wetChange) },
    working: joined(trial.working, {
      steps: [
        workingStep(
          'size today',
          phrase`(opening ${mm(opening)} − least gap ${mm(least)}) ÷ (1 + swelling ${mm(swell)} ÷ ${mm(opening)})`,
          mm(size),
        ),
      ],
      holds: phrase`An opening that keeps its size.`,
      sources: ['common-practice'],
    }),
  };
}
