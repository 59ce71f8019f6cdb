import { followReadings } from './follow-readings.ts';
import { layBlanks } from './lay-blanks.ts';
import { lineage } from './lineage.ts';
import type { MillingInput } from './milling-input.ts';
import type { MillingStep } from './milling-step.ts';
import type { Measured } from './with-measured.ts';
import type { BlankWork, StripWork } from './workpiece.ts';

/** A strip, and what the maker noted of it during the run, in mm; what was not measured is absent. */
export interface StripRecord {
  readonly strip: StripWork;
  readonly blank: BlankWork;
  /** Thickness at which both faces were clean. */
  readonly cleanThickness?: number;
  /** Width with both edges jointed. */
  readonly finishedWidth?: number;
  /** Not usable in the end; why. */
  readonly lost?: string;
}

/**
 * What was noted of each strip of a run, out of what was measured on the way.
 *
 * @param input of the run, mm
 * @param steps of the run, mm
 * @param measured in the order it was taken, mm
 * @param lost by strip, why it can't be used
 * @returns for every strip its record. Clean thickness: the last reading said to be clean, of the
 *   strip or of what it was ripped from. Finished width: the last reading where its width is done
 * @valid readings of these steps; others, and those that don't fit, are passed over
 * @example stripRecords(oneShelf, millingSequence(oneShelf), [], { 'B1@0/1': 'split' })
 *   // => [{ strip: { id: 'B1@0/1' }, lost: 'split' }]
 * @source what was measured
 */
export function stripRecords(
  input: MillingInput,
  steps: readonly MillingStep[],
  measured: readonly Measured[],
  lost: Readonly<Record<string, string>>,
): StripRecord[] {
  const was = lineage(steps);
  const { counted } = followReadings(steps, measured);
  const lastWidth = new Map<string, string>();
  for (const { id, stage, pieces } of steps) {
    if (stage === 'rip parallel' || stage === 'sawn edge') for (const piece of pieces) lastWidth.set(piece.id, id);
  }
  return layBlanks(input).flatMap((blank) =>
    blank.strips.map((strip): StripRecord => {
      const { id } = strip;
      const before = was.get(id) ?? new Set([id, blank.id]);
      const clean = counted.findLast(({ piece, clean: all }) => all === true && before.has(piece));
      const width = counted.findLast(({ piece, step }) => piece === id && step === lastWidth.get(id));
      const why = lost[id];
      return {
        strip,
        blank,
        ...(clean && { cleanThickness: clean.value }),
        ...(width && { finishedWidth: width.value }),
        ...(why !== undefined && { lost: why }),
      };
    }),
  );
}
