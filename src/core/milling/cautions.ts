import { phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { MachineLimits } from './machine-limits.ts';
import type { Caution, Machine, StepPiece } from './milling-step.ts';

/** A caution in plain words, a habit of the trade unless it has another source. */
export const caution = (text: string, source: SourceId = 'common-practice'): Caution => ({ say: phrase(text), source });

const manualFirst = caution("The machine's manual, local rules and trained advice come first.");
const soundStock = caution('No loose knots, nails, grit or open checks: look both faces over, use a metal detector.');
const dust = caution('Dust extraction on; eyes, ears and lungs protected.', 'osha-memory');

/** The usual cautions of each machine, most urgent first. */
const usual: Readonly<Record<Machine, readonly Caution[]>> = {
  bench: [],
  rack: [],
  clamps: [],
  'hand plane': [caution('Hold the work against a stop; both hands behind the edge.')],
  'hand saw': [caution('Clamp the work; support the end that falls.')],
  jointer: [
    caution('Guard over the cutterhead, always; hands never pass over it.', 'osha-memory'),
    soundStock,
    caution('Read the grain: feed so that it rises away from the cut.'),
    dust,
    manualFirst,
  ],
  planer: [
    caution('Stand to one side of the infeed; never look in while it runs.'),
    soundStock,
    caution('One piece at a time unless the manual allows more; support long ends.'),
    dust,
    manualFirst,
  ],
  'table saw': [
    caution('Guard on; riving knife or spreader in line with the blade.', 'osha-memory'),
    caution('Stand out of the line of the blade: a pinched piece is thrown back.', 'osha-memory'),
    caution('Never reach over the blade; wait until it stands still to clear offcuts.', 'osha-memory'),
    dust,
    manualFirst,
  ],
  'guided saw': [
    caution('Riving knife in place; let the blade stop before lifting the saw.', 'osha-memory'),
    caution('Both sides of the cut supported, so that it neither closes nor drops.'),
    caution('Cord and hose clear of the rail.'),
    dust,
    manualFirst,
  ],
  router: [
    caution('Feed against the turn of the bit; a climb cut runs away.'),
    caution('Work and rails clamped; bit tight, and still before it is lifted.'),
    dust,
    manualFirst,
  ],
};

const fed: readonly Machine[] = ['jointer', 'planer', 'table saw', 'router'];

/**
 * The cautions of a step: those of its pieces' size first, then the usual ones of the machine.
 *
 * - `machine`: where the step is done; `pieces`: with their size in mm; `limits`: for widths that need push blocks
 *
 * Result: cautions with their sources, most urgent first. Errors: none.
 *
 * Example: strips of 60 mm on the jointer: push blocks come first, then the guard.
 *
 * Source: named with each caution.
 */
export function cautionsFor(machine: Machine, pieces: readonly StepPiece[], limits: MachineLimits): Caution[] {
  const narrow = pieces.some(
    ({ size, target }) => Math.min(size.width, target ?? size.width) < limits.pushBlockWidth.mm,
  );
  const cautions: Caution[] = [];
  if (narrow && (machine === 'jointer' || machine === 'table saw')) {
    const tool = machine === 'jointer' ? 'push blocks' : 'push sticks';
    cautions.push({
      say: phrase(`Narrower than {width}: ${tool} for every pass.`, { width: mm(limits.pushBlockWidth.mm) }),
      source: limits.pushBlockWidth.source,
    });
  }
  const longest = Math.max(0, ...pieces.map(({ size }) => size.length));
  if (fed.includes(machine) && machine !== 'router' && longest > limits.sledLength.mm) {
    cautions.push(caution('Long pieces: a stand or a helper takes the far end.'));
  }
  return [...cautions, ...usual[machine]];
}
