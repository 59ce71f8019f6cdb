import type { MillingInput } from './milling-input.ts';
import type { StepPiece } from './milling-step.ts';
import { type Panel, parts } from './panel.ts';
import type { StepDraft } from './step-draft.ts';

/** Glue up what is planed together, and let the seams dry. */
export function glueSteps(panels: readonly Panel[], input: MillingInput): StepDraft[] {
  const pieces = panels.flatMap(parts).filter((part) => part.seams > 0);
  const inParts = panels.some((panel) => panel.groups.length > 1);
  return gluing(
    'glue',
    inParts ? 'Glue up the sub-panels' : 'Glue up the panels',
    inParts ? 'They fit the planer: only the last seams are flushed by hand.' : 'Levelled at the planer, or by hand.',
    pieces,
    input,
  );
}

/** Glue, and let the seams dry; nothing when there is nothing to glue. */
export function gluing(
  stage: 'glue' | 'glue panels',
  title: string,
  why: string,
  pieces: readonly StepPiece[],
  { practice }: MillingInput,
): StepDraft[] {
  if (pieces.length === 0) return [];
  return [
    {
      stage,
      way: 'clamps',
      title,
      todo: 'Dry run first. Triangle whole, seams level, clamps over and under in turn.',
      why,
      pieces,
    },
    {
      stage: `${stage} rest`,
      way: 'rack',
      title: 'Let the seams dry',
      todo: 'Out of the clamps when the glue says so, then {wait} with air on both faces.',
      why: 'Glue swells the seam: planed too soon, it sinks.',
      pieces,
      waits: practice.glueRestSeconds.value,
    },
  ];
}
