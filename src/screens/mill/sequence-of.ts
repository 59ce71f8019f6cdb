import { shop } from '../../app/shop.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { MillingInput } from '../../core/milling/milling-input.ts';
import { millingSequence } from '../../core/milling/milling-sequence.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Plan } from '../../store/records/plan.ts';
import { millingInput } from './milling-input.ts';

interface Sequence {
  readonly input: MillingInput;
  readonly steps: readonly MillingStep[];
}

/** The steps that a plan needs with the machines of the shop as they are now, and what they are made from. */
export function sequenceOf(plan: Plan, piece: Piece, rack: readonly Board[]): Outcome<Sequence> {
  const input = millingInput(plan, piece, rack, shop.value);
  const steps = millingSequence(input);
  return isProblem(steps) ? steps : { input, steps };
}
