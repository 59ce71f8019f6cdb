import { phrase } from '../answer/phrase.ts';
import { seconds } from '../answer/quantity.ts';
import { caution } from './cautions.ts';
import { whyRipFirst } from './cut-workpieces.ts';
import type { MillingInput } from './milling-input.ts';
import type { Caution, Size } from './milling-step.ts';
import { grouped, type StepDraft, wayKey } from './step-draft.ts';
import type { Ways } from './ways.ts';
import type { BlankWork, Workpiece } from './workpiece.ts';

const roughSize = ({ board, length }: BlankWork): Size => ({ thickness: board.thickness, width: board.width, length });

/** Mark out and crosscut rough: on the saw horses, boards as they came. */
export function crosscutSteps(blanks: readonly BlankWork[], ways: Ways, input: MillingInput): StepDraft[] {
  const pieces = blanks.map((blank) => ({ id: blank.id, label: blank.label, size: roughSize(blank) }));
  const longOnes = blanks.filter((blank) => blank.leftLong).map((blank) => blank.label);
  const cautions: Caution[] = [
    caution('Look for nails and grit with a metal detector before any blade touches the board.'),
  ];
  const markOut: StepDraft = {
    stage: 'mark out',
    way: { machine: 'bench' },
    title: phrase('Mark out the blanks'),
    todo: phrase(
      longOnes.length === 0
        ? 'Chalk every crosscut, measured from one end; keep clear of checks, knots and the first bit of each end.'
        : `Chalk every crosscut, measured from one end. Left long on purpose: ${longOnes.join(', ')}.`,
    ),
    why: phrase(
      longOnes.length === 0
        ? 'A mark costs nothing; a blank that holds a split is lost.'
        : 'Short pieces are not safe over jointer and planer: they stay in one length and are crosscut last.',
    ),
    pieces,
    cautions,
  };

  const boardSize = ({ board: { thickness, width, length } }: BlankWork): Size => ({ thickness, width, length });
  const cuts = grouped(blanks, (blank) => wayKey(ways.crosscutRough(boardSize(blank)))).map((group): StepDraft => {
    const way = ways.crosscutRough(boardSize(group[0] as BlankWork));
    return {
      stage: 'crosscut rough',
      way,
      title: phrase('Crosscut rough'),
      todo: phrase('Cut each board across at the marks and chalk its mark on every new end.'),
      why: phrase('Short wood is flatter: a bow falls with the square of the length.'),
      target: { dimension: 'length', tolerance: input.shop.crosscutKerf },
      pieces: group.map((blank) => ({
        id: blank.id,
        label: blank.label,
        size: boardSize(blank),
        target: blank.length,
      })),
      cautions: [caution('Support the board on both sides of the cut; rough boards never go along a fence.')],
    };
  });
  return blanks.length === 0 ? [] : [markOut, ...cuts];
}

const ripTodo = {
  'guided saw': 'First a straight cut along the worst edge, then each strip with the rail.',
  'table saw':
    'Screw the blank to a carrier with a straight edge, hollow face down, and run the carrier along the fence.',
  'hand saw': 'Snap a line and saw along it; leave the line.',
} as const;

/** Rip what can't be flattened whole. */
export function ripSteps(workpieces: readonly Workpiece[], ways: Ways, input: MillingInput): StepDraft[] {
  const ripped = workpieces.filter((piece) => whyRipFirst(piece.blank, input) !== null);
  const wayOf = (piece: Workpiece) => ways.ripRough(roughSize(piece.blank), piece.size.width);
  return grouped(ripped, (piece) => wayKey(wayOf(piece))).map((group): StepDraft => {
    const way = wayOf(group[0] as Workpiece);
    const reasons = new Set(group.map((piece) => whyRipFirst(piece.blank, input)));
    return {
      stage: 'rip rough',
      way,
      title: phrase('Rip rough'),
      todo: phrase(ripTodo[way.machine as keyof typeof ripTodo]),
      why: phrase(
        reasons.has('wider')
          ? 'Wider than can be flattened here; and a cup falls with the square of the width.'
          : 'Ripped first, a cup costs less thickness: it falls with the square of the width.',
      ),
      target: { dimension: 'width', tolerance: input.shop.ripKerf / 2 },
      pieces: group.map((piece) => ({
        id: piece.id,
        label: piece.label,
        size: roughSize(piece.blank),
        target: piece.size.width,
        from: [piece.blank.id],
      })),
      cautions: [caution('Wood under tension closes on the blade: a wedge in the kerf, the riving knife in place.')],
    };
  });
}

/** A rest after ripping for wood that will lose much; the wait is a timer that a moisture reading may end early. */
export function restRippedSteps(workpieces: readonly Workpiece[], input: MillingInput): StepDraft[] {
  const resting = workpieces.filter((piece) => whyRipFirst(piece.blank, input) !== null && losesMuch(piece, input));
  return restSteps('rest ripped', resting, input.practice.restRippedSeconds.value, 'Rest the ripped strips');
}

/** A wait for wood that was opened up; nothing when no piece needs one. */
export function restSteps(
  stage: 'rest ripped' | 'rest',
  resting: readonly Workpiece[],
  waits: number,
  title: string,
): StepDraft[] {
  if (resting.length === 0) return [];
  return [
    {
      stage,
      way: { machine: 'rack' },
      title: phrase(title),
      todo: phrase('Sticker the pieces so that air reaches every face and leave them for {wait}.', {
        wait: seconds(waits),
      }),
      why: phrase('Freshly cut wood moves; what it does now it does not do in the panel.'),
      pieces: resting.map(({ id, label, size }) => ({ id, label, size })),
      waits,
    },
  ];
}

/** Whether so much comes off a piece that the wood will move: more than a fixed depth, a share, or thick wood. */
export function losesMuch({ blank, need, flat }: Workpiece, { practice }: MillingInput): boolean {
  if (flat) return false;
  const rough = blank.board.thickness;
  const off = rough - need;
  return off >= practice.muchMm.value || off >= practice.muchShare.value * rough || need >= practice.thickMm.value;
}
