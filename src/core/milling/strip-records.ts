import { layBlanks } from './lay-blanks.ts';
import { lineage } from './lineage.ts';
import type { MillingInput } from './milling-input.ts';
import type { MillingStep } from './milling-step.ts';
import type { StripRecord } from './run-outcome.ts';
import type { Measured } from './with-measured.ts';

/**
 * What was noted of each strip of a run, out of what was measured on the way.
 *
 * @param input of the run, mm
 * @param steps of the run, mm
 * @param readings in the order they were taken, mm
 * @param lost by strip, why it can't be used
 * @returns for every strip its record. Clean thickness: the last reading said to be clean, of the
 *   strip or of what it was ripped from. Finished width: the last reading where its width is done
 * @valid readings of these steps; others are passed over
 * @example stripRecords(oneShelf, millingSequence(oneShelf), [], { 'B1@0/1': 'split' })
 *   // => [{ strip: 'B1@0/1', lost: 'split' }]
 * @source what was measured
 */
export function stripRecords(
  input: MillingInput,
  steps: readonly MillingStep[],
  readings: readonly Measured[],
  lost: Readonly<Record<string, string>>,
): StripRecord[] {
  const was = lineage(steps);
  const lastWidth = new Map<string, string>();
  for (const { id, stage, pieces } of steps) {
    if (stage === 'rip parallel' || stage === 'sawn edge') for (const piece of pieces) lastWidth.set(piece.id, id);
  }
  return layBlanks(input).flatMap(({ id: blank, strips }) =>
    strips.map(({ id }): StripRecord => {
      const before = was.get(id) ?? new Set([id, blank]);
      const clean = readings.findLast(({ piece, clean: all }) => all === true && before.has(piece));
      const width = readings.findLast(({ piece, step }) => piece === id && step === lastWidth.get(id));
      const why = lost[id];
      return {
        strip: id,
        ...(clean && { cleanThickness: clean.value }),
        ...(width && { finishedWidth: width.value }),
        ...(why !== undefined && { lost: why }),
      };
    }),
  );
}
