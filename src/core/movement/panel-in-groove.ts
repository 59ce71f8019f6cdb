import { badNumber } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { partMovement, type Wood } from './part-movement.ts';
import type { Seasons } from './seasons.ts';

export interface GrooveInput {
  readonly wood: Wood;
  readonly seasons: Seasons;
  /** Between the inner edges of the frame, across the panel's grain, mm. */
  readonly opening: number;
  /** Of the groove on each side, mm. */
  readonly depth: number;
  /** Room that must be left at the bottom of each groove in the dampest season, mm; 0.5 unless told otherwise. */
  readonly spare?: number;
  /** What must stay in each groove in the driest season, mm; 3 unless told otherwise. */
  readonly hold?: number;
}

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
 * @param input wood, moisture today and in the seasons (percent), opening and depth of the grooves (mm), spare room and least hold (mm)
 * @returns width to cut today, and the gap at the bottom of each groove today and in both seasons, mm
 *
 * Valid: a frame whose rails run across the panel's grain, and so don't move; a panel pinned or spaced in the middle.
 * Errors: a `Problem` on `depth` when the groove is too shallow for the panel to move and still be held; on `opening`,
 * `spare`, `hold`, or as `partMovement`.
 * Example: cherry, flat, opening 300 mm, grooves 10 mm, 8 % today, 6 % and 11 %: cut 316.6 mm, gap 1.7 mm today.
 * Source: movement by Wood handbook (FPL-GTR-190), chapter 13; spare room and hold are common practice.
 */
export function panelInGroove(input: GrooveInput): Outcome<Worked<PanelInGroove>> {
  const { wood, seasons, opening, depth, spare = 0.5, hold = 3 } = input;
  const wrong =
    badNumber('opening', 'The opening', opening, 'mm', { above: 0 }) ??
    badNumber('depth', 'The depth of the groove', depth, 'mm', { above: 0, most: 100 }) ??
    badNumber('spare', 'The spare room', spare, 'mm', { least: 0, most: depth }) ??
    badNumber('hold', 'The hold', hold, 'mm', { least: 0, most: 100 });
  if (wrong) return wrong;
  const room = opening + 2 * depth;
  // Movement goes with width, so that one trial width gives the share by which any width moves.
  const trial = partMovement(wood, room, seasons);
  if (isProblem(trial)) return trial.field === 'width' ? { ...trial, field: 'opening' } : trial;
  const { shrink, swell, dryChange, wetChange } = trial.value;
  const width = (room - 2 * spare) / (1 + swell / room);
  const gap = (share: number): number => (room - width * (1 + share / room)) / 2;
  const heldDry = depth - gap(-shrink);
  if (heldDry < hold) {
    return problem(
      'depth',
      'In the dry season only {held} would be left in the groove, less than {hold}. Make the groove deeper.',
      {
        held: mm(Math.max(0, heldDry)),
        hold: mm(hold),
      },
    );
  }
  return {
    value: { width, gapToday: gap(0), gapDry: gap(dryChange), gapWet: gap(wetChange), heldDry },
    working: {
      steps: [
        ...trial.working.steps,
        {
          finds: 'width to cut today',
          by: phrase(
            '(room between the groove bottoms {room} − twice the spare {spare}) ÷ (1 + swelling {swell} ÷ {room})',
            {
              room: mm(room),
              spare: mm(spare),
              swell: mm(swell),
            },
          ),
          gives: mm(width),
        },
        {
          finds: 'gap in each groove today',
          by: phrase('half of what {room} leaves over {width}', { room: mm(room), width: mm(width) }),
          gives: mm(gap(0)),
        },
      ],
      holds: phrase('A panel free in its grooves and centred. Keep glue and finish out of the groove.'),
      sources: [...new Set([...trial.working.sources, 'common-practice' as const])],
    },
  };
}
