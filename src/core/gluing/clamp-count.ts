import { badNumber, firstBad } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { count, kilopascals, mm, newtons } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { badSeams, type Seam } from './seam.ts';

export interface ClampCount {
  /** Newtons on the seam that asks for most: parallel seams are pressed by the same clamps. */
  readonly force: number;
  readonly clamps: number;
  /** mm from clamp to clamp; the end ones stand half of it from the ends. */
  readonly spacing: number;
  /** Clamps that the spread of pressure asks for, however strong they are. */
  readonly leastForSpread: number;
}

export interface ClampWork {
  /** The seams of one panel, parallel, pressed by one row of clamps. */
  readonly seams: readonly Seam[];
  readonly kPa: number;
  /** Newtons one clamp gives. */
  readonly clampForce: number;
  /** mm from the clamp's pad to the nearest seam: width of the outer board. Left out: spread of pressure is not looked at. */
  readonly outerBoard?: number | undefined;
  /** mm of caul between pad and board, measured the same way. */
  readonly caul?: number;
}

/** More than this in one row is a slip in the force or the size. */
const mostClamps = 500;

/**
 * How many clamps a panel takes, and how far apart.
 *
 * Pressure spreads from each pad at 45 degrees to both sides, so at a seam it covers twice the wood and caul in
 * between. The spacing is the closer of what force and spread allow.
 *
 * @param work seams in mm, pressure in kPa, newtons per clamp, widths in mm
 * @returns force on the neediest seam in newtons, clamps, and their spacing in mm
 * @valid parallel seams of one panel; seams apart from each other are asked one by one
 * @errors no seams, a size or force that makes no sense, more than 500 clamps
 * @example clampCount({ seams: [{ length: 1200, width: 20 }], kPa: 1129, clampForce: 2000 }).value
 *   // => { force: 27096.0, clamps: 14, spacing: 85.7 }
 * @source force is pressure times area; spread at 45 degrees is common practice
 */
export function clampCount({ seams, kPa, clampForce, outerBoard, caul = 0 }: ClampWork): Outcome<Worked<ClampCount>> {
  const bad =
    badSeams(seams) ??
    firstBad([
      ['kPa', 'The pressure', kPa, 'kilopascals', { above: 0, most: 5000 }],
      ['clampForce', 'The force of a clamp', clampForce, 'newtons', { above: 0, most: 50000 }],
      ['caul', 'The caul', caul, 'mm', { least: 0, most: 1000 }],
      ['outerBoard', 'The outer board', outerBoard === undefined ? 1 : outerBoard, 'mm', { above: 0, most: 2000 }],
    ]);
  if (bad) return bad;

  const length = Math.max(...seams.map((seam) => seam.length));
  // 1 kPa is 0.001 N/mm2.
  const force = Math.max(...seams.map((seam) => seam.length * seam.width * kPa * 1e-3));
  const byForce = Math.ceil(force / clampForce - 1e-9);
  const reach = 2 * ((outerBoard ?? Number.POSITIVE_INFINITY) + caul);
  const bySpread = Math.max(1, Math.ceil(length / reach - 1e-9));
  const clamps = Math.max(byForce, bySpread);
  const tooMany = badNumber('clampForce', 'The number of clamps', clamps, 'count', { most: mostClamps });
  if (tooMany) return tooMany;
  const spacing = length / clamps;
  return {
    value: { force, clamps, spacing, leastForSpread: bySpread },
    working: {
      steps: [
        workingStep('force on the seam', phrase`Length times width times ${kilopascals(kPa)}.`, newtons(force)),
        workingStep(
          'clamps for the force',
          phrase`${newtons(force)} at ${newtons(clampForce)} each, rounded up.`,
          count(byForce),
        ),
        ...(outerBoard === undefined
          ? []
          : [
              workingStep(
                'clamps for the spread of pressure',
                phrase`At 45 degrees each clamp covers ${mm(reach)} of a seam ${mm(length)} long.`,
                count(bySpread),
              ),
            ]),
        workingStep(
          'spacing',
          phrase`${mm(length)} over ${count(clamps)} clamps, half a space at each end.`,
          mm(spacing),
        ),
      ],
      sources: ['common-practice', 'geometry'],
    },
  };
}

/** Where each clamp goes, mm from one end, above and below by turns so that the panel is not pulled hollow. */
export interface ClampPlace {
  readonly at: number;
  readonly side: 'below' | 'above';
}

/**
 * Where the clamps of a panel stand: half a space from each end, above and below by turns, the first below.
 *
 * @param length of the panel, mm
 * @param clamps how many
 * @returns a place for each, mm from one end
 * @valid one row of clamps
 * @example clampPlaces(1000, 2) // => [{ at: 250, side: 'below' }, { at: 750, side: 'above' }]
 * @source common practice
 */
export function clampPlaces(length: number, clamps: number): ClampPlace[] {
  return Array.from({ length: clamps }, (_, index) => ({
    at: ((index + 0.5) * length) / clamps,
    side: index % 2 === 0 ? 'below' : 'above',
  }));
}
