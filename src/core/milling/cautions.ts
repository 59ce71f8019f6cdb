import { phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { MachineLimits } from './machine-limits.ts';
import type { Caution, Machine, StepPiece } from './milling-step.ts';

/** A caution in plain words, a habit of the trade unless it has another source. */
export const caution = (text: string, source: SourceId = 'common-practice'): Caution => ({
  say: phrase`${text}`,
  source,
});

const osha = (text: string) => caution(text, 'osha-memory');

export const manualFirst = caution('The machine’s manual, local rules and trained advice come first.');

const soundStock = caution('No loose knots, nails, grit or open checks: look over both faces, use a metal detector.');

const powered = (...own: Caution[]): Caution[] => [
  ...own,
  osha('Dust extraction on; eyes, ears and lungs protected.'),
  manualFirst,
];

/** The usual cautions of each machine, most urgent first. */
const usual: Readonly<Partial<Record<Machine, readonly Caution[]>>> = {
  'hand plane': [caution('Work against a stop; both hands behind the edge.')],
  'hand saw': [caution('Clamp the work; support the end that falls.')],
  jointer: powered(
    osha('Guard over the cutterhead, always; hands never pass over it.'),
    soundStock,
    caution('Feed so that the grain rises away from the cut.'),
  ),
  planer: powered(
    caution('Stand beside the infeed; never look in while it runs.'),
    soundStock,
    caution('One piece at a time unless the manual allows more; support long ends.'),
  ),
  'table saw': powered(
    osha('Guard on; riving knife or spreader in line with the blade.'),
    osha('Stand out of the line of the blade: a pinched piece is thrown back.'),
    osha('Never reach over the blade; clear offcuts once it stands still.'),
  ),
  'guided saw': powered(
    osha('Riving knife in place; let the blade stop before lifting the saw.'),
    caution('Both sides of the cut supported: it must neither close nor drop.'),
    caution('Cord and hose clear of the rail.'),
  ),
  'mitre saw': powered(
    osha('Guard working; hands well clear of the blade and never crossed.'),
    caution('Flat on the table and tight to the fence: what rocks is thrown. Let the blade stop before it comes up.'),
  ),
  router: powered(
    caution('Feed against the turn of the bit; a climb cut runs away.'),
    caution('Work and rails clamped; bit tight, and still before it is lifted.'),
  ),
};

/** What feeds a narrow piece past each blade. */
const pushed: Readonly<Partial<Record<Machine, string>>> = { jointer: 'push blocks', 'table saw': 'push sticks' };

/**
 * The cautions of a step: those of its pieces' size first, then the usual ones of the machine.
 *
 * @param machine where the step is done
 * @param pieces with their size in mm
 * @param limits for widths that need push blocks
 * @returns cautions with their sources, most urgent first
 * @valid the machines of a small shop
 * @example cautionsFor('jointer', [{ size: { thickness: 20, width: 60, length: 600 } }], machineLimits)[0].say.text.includes(
 *   'push blocks',
 * ) // => true
 * @source named with each caution
 */
export function cautionsFor(machine: Machine, pieces: readonly StepPiece[], limits: MachineLimits): Caution[] {
  const { pushBlockWidth, sledLength } = limits;
  const tool = pushed[machine];
  const narrow = pieces.some(({ size, target = size.width }) => Math.min(size.width, target) < pushBlockWidth.mm);
  const long = pieces.some(({ size }) => size.length > sledLength.mm);
  return [
    ...(tool && narrow
      ? [
          {
            say: phrase`Narrower than ${mm(pushBlockWidth.mm)}: ${tool} for every pass.`,
            source: pushBlockWidth.source,
          },
        ]
      : []),
    ...(long && (tool || machine === 'planer') ? [caution('A stand or a helper takes the far end.')] : []),
    ...(usual[machine] ?? []),
  ];
}
