import type { FinishStep } from '../../core/finishing/finish-step.ts';
import type { MixRatio } from '../../core/finishing/two-part-mix.ts';
import type { Finish } from '../../store/records/finish.ts';
import type { Json } from '../../store/records/record.ts';
import type { FlowStep } from '../../ui/steps/flow-step.ts';

/** A step as it is kept: with the pieces that it is ticked for where there are several, and for a coat what that coat is likely to take. */
export interface KeptStep extends FinishStep {
  readonly pieces: readonly { readonly id: string; readonly label: string }[];
  readonly coatLitres?: number;
  readonly mix?: StepMix;
}

/** Two parts that are mixed for one coat, in equal batches. */
export interface StepMix {
  readonly ratio: MixRatio;
  readonly batches: number;
  readonly potLifeSeconds?: number;
}

/** What belongs to one coat. */
export type CoatOf = Pick<KeptStep, 'coatLitres' | 'mix'>;

/** Which coat a step puts on, counted from 1; 0 for other steps. */
export const coatNumber = ({ id, stage }: FinishStep): number =>
  stage === 'coat' ? Number(/^coat-(\d+)/.exec(id)?.[1]) : 0;

/** The schedule for these pieces as it is stored. */
export const keptSteps = (
  steps: readonly FinishStep[],
  pieces: readonly { readonly id: string; readonly name: string }[],
  coats: readonly CoatOf[],
): readonly Json[] =>
  steps.map((step) => {
    const coat = coats[coatNumber(step) - 1];
    return {
      ...step,
      pieces: pieces.length > 1 ? pieces.map(({ id, name }) => ({ id, label: name })) : [],
      ...coat,
    };
  }) as unknown as readonly Json[];

export const stepsOf = ({ steps }: Pick<Finish, 'steps'>): readonly KeptStep[] => steps as unknown as KeptStep[];

/** A step as the step list shows it, and as it is kept. */
export interface ShownStep extends FlowStep {
  readonly kept: KeptStep;
}

export const shownSteps = (finish: Pick<Finish, 'steps'>): readonly ShownStep[] =>
  stepsOf(finish).map((kept) => {
    const { waits: _, cautions, source, ...step } = kept;
    return { ...step, cautions: cautions.map((say) => ({ say, source })), kept };
  });
