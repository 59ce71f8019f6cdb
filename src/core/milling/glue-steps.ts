import { phrase } from '../answer/phrase.ts';
import { seconds } from '../answer/quantity.ts';
import type { MillingInput } from './milling-input.ts';
import type { StepPiece } from './milling-step.ts';
import { type Panel, parts, stepPiece } from './panel.ts';
import type { StepDraft } from './step-draft.ts';

/** Glue up what is planed together, and let the seams dry. */
export function glueSteps(panels: readonly Panel[], { practice }: MillingInput): StepDraft[] {
  const pieces = panels.flatMap(parts).filter((part) => part.seams > 0);
  const inParts = panels.some((panel) => panel.groups.length > 1);
  const title = inParts ? 'Glue up the sub-panels' : 'Glue up the panels';
  const why = inParts
    ? 'Each sub-panel still fits the planer, so that only the last seams are flushed by hand.'
    : 'The whole panel still fits the planer, or is levelled by hand.';
  return gluing('glue', title, why, pieces.map(stepPiece), practice.glueRestSeconds.value);
}

/** Glue, and let the seams dry; nothing when there is nothing to glue. */
export function gluing(
  stage: 'glue' | 'glue panels',
  title: string,
  why: string,
  pieces: readonly StepPiece[],
  waits: number,
): StepDraft[] {
  if (pieces.length === 0) return [];
  return [
    {
      stage,
      way: { machine: 'clamps' },
      title: phrase(title),
      todo: phrase('Dry run first. Triangle whole, seams level, clamps over and under in turn.'),
      why: phrase(why),
      pieces,
    },
    {
      stage: stage === 'glue' ? 'glue rest' : 'glue panels rest',
      way: { machine: 'rack' },
      title: phrase('Let the seams dry'),
      todo: phrase('Out of the clamps when the glue says so, then leave them with air on both faces for {wait}.', {
        wait: seconds(waits),
      }),
      why: phrase('Glue swells the seam; planed too soon, it sinks later and shows.'),
      pieces,
      waits,
    },
  ];
}
