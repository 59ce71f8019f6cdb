import { phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import { byWay, type StepDraft } from './step-draft.ts';
import type { TargetedPiece } from './thickness-targets.ts';
import type { ThicknessWay, Ways } from './ways.ts';

const snipe = 'Snipe falls in the waste at the ends.';

const thicknessTodo: Readonly<Record<ThicknessWay, string>> = {
  planer: `Marked face down, thickest first, all at each setting. ${snipe}`,
  'planer carrier': `On a flat carrier, short ones between longer rails as thick; light passes. ${snipe}`,
  'router carrier': 'Marked face down between two rails, light passes.',
  'hand plane': 'Gauge a line all around from the marked face; plane to it.',
};

/** The other face to thickness: a step per setting, thick before thin. */
export function thicknessSteps(
  stage: 'first thickness' | 'thickness',
  pieces: readonly TargetedPiece[],
  ways: Ways,
  to: (piece: TargetedPiece) => number,
): StepDraft[] {
  return byWay(
    pieces,
    (piece) => ways.thickness(piece.size, to(piece)),
    (group, way, first) => ({
      stage,
      title: phrase`Thickness to ${mm(to(first))}`,
      todo: thicknessTodo[way],
      why: whyThickness(stage, group),
      target: { dimension: 'thickness', value: to(first) },
      pieces: group,
    }),
    to,
  );
}

function whyThickness(stage: StepDraft['stage'], group: readonly TargetedPiece[]): string {
  if (stage === 'first thickness') return 'The surplus is for the last milling.';
  const over = group.some(({ final, need }) => final > need);
  return `${over ? 'The surplus is for planing the panel. ' : ''}One setting makes all equal.`;
}
