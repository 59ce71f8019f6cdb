import { phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { MillingInput } from './milling-input.ts';
import type { Stage } from './milling-step.ts';
import { byWay, plainPiece } from './piece-drafts.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import type { TargetedPiece } from './thickness-targets.ts';
import type { Way, Ways } from './ways.ts';

const thicknessTodo: Readonly<Record<string, string>> = {
  planer: 'Marked face down, thickest piece first, every piece at each setting before the next turn of the crank.',
  'planer carrier': 'Fixed to a flat carrier, for short ones between longer rails of the same thickness; light passes.',
  'router carrier': 'Marked face down between two rails; rout the upper face down in light passes.',
  'hand plane': 'Gauge a line all around from the marked face and plane down to it.',
};

/** The other face to thickness: a step per setting, thick before thin. */
export function thicknessSteps(
  stage: 'first thickness' | 'thickness',
  pieces: readonly TargetedPiece[],
  ways: Ways,
  { practice }: MillingInput,
  to: (piece: TargetedPiece) => number,
): StepDraft[] {
  const order = [...pieces].sort((one, other) => to(other) - to(one));
  return grouped(order, (piece) => to(piece).toFixed(2)).flatMap((setting) => {
    const value = to(setting[0] as TargetedPiece);
    return byWay(
      setting,
      (piece) => ways.thickness(piece.size, value),
      (way, group) => ({
        stage,
        way,
        key: value,
        title: phrase('Thickness to {value}', { value: mm(value) }),
        todo: phrase(`${thicknessTodo[wayKey(way)] ?? ''}${snipe(way)}`),
        why: phrase(whyThickness(stage, group)),
        target: { dimension: 'thickness', value, tolerance: practice.thicknessToleranceMm.value },
        pieces: group.map(plainPiece),
        setting: phrase('Last pass at {value}, all of them at this one setting.', { value: mm(value) }),
      }),
    );
  });
}

const snipe = (way: Way): string => (way.machine === 'planer' ? ' Snipe falls in the waste at the ends.' : '');

function whyThickness(stage: Stage, group: readonly TargetedPiece[]): string {
  if (stage === 'first thickness')
    return 'Over thickness on purpose: what is left is for the last milling after the rest.';
  const over = group.some((piece) => piece.final > piece.need);
  return over
    ? 'A little over thickness: the panel is planed after gluing. One setting makes all strips equal.'
    : "One setting makes all of them equal, to the part's own thickness.";
}
