import { phrase } from '../answer/phrase.ts';
import { seconds } from '../answer/quantity.ts';
import { flatteningWidth, ripsFirst } from './cut-workpieces.ts';
import type { MillingBoard, MillingInput } from './milling-input.ts';
import type { Size, StepPiece } from './milling-step.ts';
import { byWay, type StepDraft } from './step-draft.ts';
import type { RoughRipWay, Ways } from './ways.ts';
import type { BlankWork, Workpiece } from './workpiece.ts';

const roughSize = ({ thickness, width }: MillingBoard, length: number): Size => ({ thickness, width, length });

/** Mark out and crosscut rough: on the saw horses, boards as they came. */
export function crosscutSteps(blanks: readonly BlankWork[], ways: Ways, { shop }: MillingInput): StepDraft[] {
  const long = blanks.filter(({ leftLong }) => leftLong).map(({ label }) => label);
  return [
    ...byWay(
      blanks,
      () => 'bench',
      () => ({
        stage: 'mark out',
        title: 'Mark out the blanks',
        todo: `Chalk every crosscut, measured from one end. No knot or check inside a part: the extra length takes those of the ends.${
          long.length > 0 ? ` Left long on purpose: ${long.join(', ')}.` : ''
        }`,
        why:
          long.length > 0
            ? 'Short pieces are not safe on the machines: crosscut last.'
            : 'A blank that holds a split is lost.',
        pieces: blanks.map((blank) => ({ ...blank, size: roughSize(blank.board, blank.length) })),
        mind: 'Nails and grit: metal detector before any blade.',
      }),
    ),
    ...byWay(
      blanks.map((blank) => ({
        ...blank,
        size: roughSize(blank.board, blank.board.length),
        target: blank.length,
      })),
      ({ size }) => ways.crosscutRough(size),
      (pieces) => ({
        stage: 'crosscut rough',
        title: 'Crosscut rough',
        todo: 'Cut at the marks; chalk the board’s mark on every new end.',
        why: 'A bow falls with the square of the length.',
        target: { dimension: 'length', tolerance: shop.crosscutKerf },
        pieces,
        mind: 'Support both sides of the cut; rough boards never go along a rip fence.',
      }),
    ),
  ];
}

const ripTodo: Readonly<Record<RoughRipWay, string>> = {
  'guided saw': 'Straighten the worst edge first, then rip along the rail.',
  'table saw carrier': 'Screwed to a straight-edged carrier that runs along the fence, hollow face down.',
  'hand saw': 'Snap a line, saw beside it.',
};

/** Rip what can't be flattened whole. */
export function ripSteps(workpieces: readonly Workpiece[], ways: Ways, input: MillingInput): StepDraft[] {
  const ripped = workpieces.flatMap(({ id, label, blank, size: { width } }) =>
    ripsFirst(blank, input)
      ? { id, label, size: roughSize(blank.board, blank.length), target: width, from: [blank.id] }
      : [],
  );
  return byWay(
    ripped,
    ({ size, target }) => ways.ripRough(size, target),
    (pieces, way) => ({
      stage: 'rip rough',
      title: 'Rip rough',
      todo: ripTodo[way],
      why: `${pieces.some(({ size }) => size.width > flatteningWidth(input)) ? 'Wider than can be flattened here. ' : ''}Ripped first, a cup costs less: it falls with the square of the width.`,
      target: { dimension: 'width', tolerance: input.shop.ripKerf / 2 },
      pieces,
      mind: 'Wood may close on the blade: riving knife in place, a wedge in the kerf.',
    }),
  );
}

/** A rest after ripping for wood that will lose much; the wait is a timer that a moisture reading may end early. */
export function restRippedSteps(workpieces: readonly Workpiece[], input: MillingInput): StepDraft[] {
  const resting = workpieces.filter((piece) => ripsFirst(piece.blank, input) && losesMuch(piece, input));
  return restSteps('rest ripped', resting, input.practice.restRippedSeconds.value, 'Rest the ripped strips');
}

/** A wait for wood that was opened up; nothing when no piece needs one. */
export const restSteps = (
  stage: 'rest ripped' | 'rest',
  resting: readonly StepPiece[],
  waits: number,
  title: string,
): StepDraft[] =>
  byWay(
    resting,
    () => 'rack',
    (pieces) => ({
      stage,
      title,
      todo: phrase`On stickers, air to every face, for ${seconds(waits)}.`,
      why: 'Freshly cut wood moves: better now than later.',
      pieces,
      waits,
    }),
  );

/** Whether so much comes off a piece that the wood will move: more than a fixed depth, a share, or thick wood. */
export function losesMuch({ blank, need }: Workpiece, { practice }: MillingInput): boolean {
  const rough = blank.board.thickness;
  const off = rough - need;
  return off >= practice.muchMm.value || off >= practice.muchShare.value * rough || need >= practice.thickMm.value;
}
