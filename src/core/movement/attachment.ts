import { firstBad } from '../answer/bad-number.ts';
import { joined } from '../answer/joined.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { widestPart } from './dimensional-change.ts';
import type { Moves } from './moves.ts';

/** What holds a top down and lets it move; all in mm. */
export type AttachmentKind =
  | { readonly kind: 'button'; readonly grooveDepth: number; readonly margin?: number; readonly hold?: number }
  | { readonly kind: 'slotted-bracket'; readonly slot: number; readonly shank: number; readonly margin?: number }
  | { readonly kind: 'swivel-bracket'; readonly swing: number; readonly margin?: number };

export interface Attachment {
  /** mm: for a button the gap at the groove's bottom, for a bracket the screw's distance from the slot's or swing's outer end. */
  readonly setting: number;
  readonly instruction: Phrase;
}

/**
 * How to set a button or an expansion bracket today so that the top moves freely, fixed along its middle.
 *
 * @param top how far the top shrinks and swells where the attachment sits, mm
 * @param by its kind: a button with the depth of its groove; a bracket with the length of its slot and the screw's
 *   shank; a swivel bracket with its whole swing across the grain; margin (1 mm) and least hold (4 mm) unless told
 *   otherwise
 * @returns the setting in mm and what to do
 * @valid a button screwed to the top with its tongue outwards, in a groove of the apron's inner face; brackets across
 *   the grain
 * @errors a `Problem` on the dimension that is too small for the movement, or makes no sense
 * @example attachment(partMovement(cherry, 240, seasons), { kind: 'button', grooveDepth: 10 }).value
 *   // => { setting: 2.79 }
 * @source geometry; margin and hold are common practice
 */
export function attachment(top: Worked<Moves>, by: AttachmentKind): Outcome<Worked<Attachment>> {
  const { shrink, swell } = top.value;
  const { margin = 1 } = by;
  const wrong = badSize(by);
  if (wrong) return wrong;
  const set = (setting: number, instruction: Phrase, how: Phrase): Worked<Attachment> => ({
    value: { setting, instruction },
    working: joined(top.working, {
      steps: [workingStep('setting today', how, mm(setting))],
      holds: phrase`A top fixed along its middle only.`,
      sources: ['geometry', 'common-practice'],
    }),
  });
  if (by.kind === 'button') {
    const { grooveDepth, hold = 4 } = by;
    const gap = swell + margin;
    const held = grooveDepth - gap - shrink;
    return held < hold
      ? problem(
          'grooveDepth',
          phrase`When dry only ${mm(Math.max(0, held))} would hold. Make the groove ${mm(gap + shrink + hold)} deep.`,
        )
      : set(
          gap,
          phrase`Leave ${mm(gap)} from the button’s tongue to the bottom of the groove.`,
          phrase`swelling ${mm(swell)} + room ${mm(margin)}`,
        );
  }
  const [field, travel] = by.kind === 'slotted-bracket' ? ['slot', by.slot - by.shank] : ['swing', by.swing];
  const needed = shrink + swell + 2 * margin;
  if (travel < needed)
    return problem(
      field,
      phrase`It gives ${mm(travel)}, the top needs ${mm(needed)}. Use buttons, or brackets that travel further.`,
    );
  // What the bracket gives beyond the need is shared out, so that both ways keep the same spare.
  const setting = swell + (travel - shrink - swell) / 2;
  return set(
    setting,
    phrase`Set the screw ${mm(setting)} from where it stops when the top swells.`,
    phrase`swelling ${mm(swell)} + half of what the movement leaves of ${mm(travel)}`,
  );
}

function badSize({ kind: _, ...sizes }: AttachmentKind): Problem | undefined {
  return firstBad(
    Object.entries(sizes).map(([name, size]) => {
      const limits = name === 'margin' || name === 'hold' ? { least: 0 } : { above: 0 };
      return [name, 'This', size, 'mm', { ...limits, most: widestPart }];
    }),
  );
}
