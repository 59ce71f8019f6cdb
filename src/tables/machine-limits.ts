import type { SourceId } from '../core/answer/source-id.ts';
import type { Limit, MachineLimit, MachineLimits } from '../core/milling/machine-limits.ts';
import type { Habit, MillingPractice } from '../core/milling/milling-practice.ts';

const limit = (mm: number, source: SourceId = 'common-practice'): Limit => ({ mm, source });

const machine = (length: number, width: number, thickness: number, depth: number): MachineLimit => ({
  leastLength: limit(length),
  leastWidth: limit(width),
  leastThickness: limit(thickness),
  depthPerPass: limit(depth),
});

/**
 * Defaults on the careful side for small hand-fed machines, in mm: least length, width and thickness of a piece, most
 * depth of a pass. Those that are inches are kept exactly: a piece of 12 in is none below 12 in. The figure of the machine's own
 * manual wins (`ownLimits`).
 */
export const machineLimits: MachineLimits = {
  // 12 in long, 3/4 in wide, 1/2 in thick; no pass over 1/8 in
  jointer: machine(304.8, 19, 12.7, 3.2),
  // 14 in reaches from one feed roller to the next with some to spare; thinner than 1/4 in shatters without a carrier
  planer: machine(355.6, 19, 6.35, 3.2),
  // 12 in to rip along the fence; a strip under 1 in between blade and fence goes another way
  tableSaw: machine(304.8, 25.4, 3.175, 76),
  // narrower than this the rail tips; the cut is as deep as a common small saw's
  guidedSaw: machine(304.8, 100, 3.175, 55),
  router: machine(200, 40, 6.35, 3.2),
  carrierLength: limit(150),
  // OSHA: push blocks when jointing wood narrower than 3 in
  pushBlockWidth: limit(76, 'osha-memory'),
  // 8 in: enough to hold with both hands clear of the blade
  sledLeast: limit(203),
  sledLength: limit(1220),
  sledWidth: limit(610),
};

const habit = (value: number, source: SourceId = 'common-practice'): Habit => ({ value, source });

/** Habits of the bench: lengths in mm, times in seconds. Assumptions are marked and can be changed. */
export const millingPractice: MillingPractice = {
  leastStripMm: habit(50),
  secondMillingMm: habit(2),
  panelAllowanceMm: habit(1),
  sawnEdgeMm: habit(0.8),
  muchMm: habit(6, 'assumption'),
  muchShare: habit(0.25, 'assumption'),
  thickMm: habit(45, 'assumption'),
  restRippedSeconds: habit(12 * 3600),
  restSeconds: habit(24 * 3600),
  restThickSeconds: habit(72 * 3600),
  glueRestSeconds: habit(24 * 3600),
  thicknessToleranceMm: habit(0.2, 'assumption'),
  widthToleranceMm: habit(0.3, 'assumption'),
  lengthToleranceMm: habit(0.4, 'assumption'),
};
