import type { MillingInput } from '../../core/milling/milling-input.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import type { Milling } from '../../store/records/milling.ts';

/** The sequence of a run as it was generated. */
export const stepsOfRun = ({ steps }: Milling): readonly MillingStep[] => steps as unknown as readonly MillingStep[];

/** What the sequence was made from. */
export const inputOfRun = ({ input }: Milling): MillingInput => input as unknown as MillingInput;
