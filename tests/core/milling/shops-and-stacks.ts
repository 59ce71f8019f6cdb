import { isProblem } from '../../../src/core/answer/problem.ts';
import type { MillingBoard, MillingInput, MillingShop } from '../../../src/core/milling/milling-input.ts';
import { millingSequence } from '../../../src/core/milling/milling-sequence.ts';
import type { MillingStep } from '../../../src/core/milling/milling-step.ts';
import { machineLimits, millingPractice } from '../../../src/tables/machine-limits.ts';

/** A small shop with everything; the scenarios take machines away. */
export const fullShop: MillingShop = {
  jointerWidth: 203,
  planerWidth: 330,
  planerSled: true,
  tableSaw: true,
  guidedSaw: true,
  router: true,
  handPlanes: true,
  ripKerf: 3.2,
  crosscutKerf: 3.2,
  edgeAllowance: 3.2,
  lengthAllowance: 50,
  faceAllowance: 1.2,
};

export const board = (id: string, given: Partial<MillingBoard> = {}): MillingBoard => ({
  id,
  thickness: 27,
  width: 180,
  length: 2400,
  cup: 1,
  bow: 4,
  ...given,
});

export const part = (
  id: string,
  length: number,
  width: number,
  thickness: number,
  given: Partial<MillingInput['parts'][number]> = {},
): MillingInput['parts'][number] => ({ id, quantity: 1, length, width, thickness, panel: false, ...given });

export const blank = (
  boardId: string,
  start: number,
  length: number,
  ...strips: [width: number, part: string, unit?: number][]
): MillingInput['blanks'][number] => ({
  board: boardId,
  start,
  length,
  strips: strips.map(([width, id, unit = 1]) => ({ width, part: id, unit })),
});

export const millingInput = (
  given: Pick<MillingInput, 'boards' | 'parts' | 'blanks'>,
  shop: Partial<MillingShop> = {},
): MillingInput => ({
  ...given,
  shop: { ...fullShop, ...shop },
  limits: machineLimits,
  practice: millingPractice,
});

export function stepsOf(input: MillingInput): MillingStep[] {
  const steps = millingSequence(input);
  if (isProblem(steps)) throw new Error(`${steps.field}: ${steps.message.text}`);
  return steps;
}

/** One line per step: stage, machine, target in mm, how many pieces. */
export const outline = (steps: readonly MillingStep[]): string[] =>
  steps.map(({ stage, machine, carrier, target, pieces }) =>
    [stage, machine + (carrier ? ' with carrier' : ''), target?.value, `${pieces.length}`]
      .filter((word) => word !== undefined)
      .join(' | '),
  );

/** A panel 520 wide and 1800 long from two boards: too wide for the planer, too long for the saw's sled. */
const lid = [part('lid', 1800, 520, 19, { panel: true })];
const lidBoards = [board('B1', { width: 300, cup: 2 }), board('B2', { width: 300, cup: 2 })];
const lidBlanks = [blank('B1', 0, 1850, [140, 'lid'], [140, 'lid']), blank('B2', 0, 1850, [140, 'lid'], [140, 'lid'])];

export const scenarios = {
  'a wide and long panel, a full shop': millingInput({ boards: lidBoards, parts: lid, blanks: lidBlanks }),
  'no jointer, a planer with a sled': millingInput(
    {
      boards: [board('B1')],
      parts: [part('rail', 900, 60, 20, { quantity: 2 })],
      blanks: [blank('B1', 0, 950, [64, 'rail', 1], [64, 'rail', 2])],
    },
    { jointerWidth: null },
  ),
  'no jointer, no sled, no table saw': millingInput(
    {
      boards: [board('B1')],
      parts: [part('shelf', 900, 300, 20, { panel: true })],
      blanks: [blank('B1', 0, 950, [170, 'shelf']), blank('B1', 953.2, 950, [170, 'shelf'])],
    },
    { jointerWidth: null, planerSled: false, tableSaw: false, router: false },
  ),
  'a jointer narrower than every board': millingInput(
    {
      boards: [board('B1', { width: 240 }), board('B2', { width: 230 })],
      parts: [part('side', 700, 280, 19, { panel: true })],
      blanks: [blank('B1', 0, 750, [110, 'side'], [110, 'side']), blank('B2', 0, 750, [110, 'side'])],
    },
    { jointerWidth: 152 },
  ),
  'a thick beam for a frame': millingInput({
    boards: [board('K1', { thickness: 80, width: 180, length: 2400, cup: 2, bow: 6 })],
    parts: [part('post', 900, 70, 70, { quantity: 2 })],
    blanks: [blank('K1', 0, 950, [74, 'post', 1], [74, 'post', 2])],
  }),
  'short cleats': millingInput({
    boards: [board('B1', { width: 60, length: 900, cup: 0, bow: 1 })],
    parts: [part('cleat', 120, 40, 22, { quantity: 3 })],
    blanks: [1, 2, 3].map((unit) => blank('B1', (unit - 1) * 173.2, 170, [44, 'cleat', unit])),
  }),
  'a folded panel': millingInput({
    boards: [board('B1'), board('B2')],
    parts: [
      part('wrap', 1900, 320, 20, {
        panel: true,
        folds: [
          { name: 'left side', length: 450 },
          { name: 'top', length: 980 },
          { name: 'right side', length: 450 },
        ],
      }),
    ],
    blanks: [blank('B1', 0, 1950, [170, 'wrap']), blank('B2', 0, 1950, [170, 'wrap'])],
  }),
  'two narrow rails side by side': millingInput({
    boards: [board('S1', { thickness: 24, width: 170, cup: 0.3 })],
    parts: [part('rail', 900, 60, 20, { quantity: 2 })],
    blanks: [blank('S1', 0, 950, [64, 'rail', 1], [64, 'rail', 2])],
  }),
  "a twisted board that can't make it": millingInput({
    boards: [board('T1', { twist: 24 }), board('B2')],
    parts: [part('rail', 900, 80, 23, { quantity: 2 })],
    blanks: [blank('T1', 0, 950, [84, 'rail', 1]), blank('B2', 0, 950, [84, 'rail', 2])],
  }),
  'mixed thickness': millingInput({
    boards: [board('K1', { thickness: 52, width: 100 }), board('B2')],
    parts: [part('leg', 700, 44, 44), part('apron', 800, 80, 22, { quantity: 2 })],
    blanks: [blank('K1', 0, 750, [48, 'leg']), blank('B2', 0, 850, [84, 'apron', 1], [84, 'apron', 2])],
  }),
  'hand tools only': millingInput(
    {
      boards: [board('B1', { width: 100 })],
      parts: [part('stile', 700, 60, 20)],
      blanks: [blank('B1', 0, 750, [64, 'stile'])],
    },
    { jointerWidth: null, planerWidth: null, planerSled: false, tableSaw: false, guidedSaw: false, router: false },
  ),
  'a mitre saw, narrower than one of the boards': millingInput(
    {
      boards: [board('B1', { width: 100 }), board('B2')],
      parts: [part('stile', 700, 60, 20), part('rail', 500, 70, 20)],
      blanks: [blank('B1', 0, 750, [64, 'stile']), blank('B2', 0, 550, [74, 'rail'])],
    },
    { tableSaw: false, guidedSaw: false, mitreWidth: 150 },
  ),
  'a jointer and a router, no planer': millingInput(
    {
      boards: [board('B1')],
      parts: [part('shelf', 900, 330, 20, { panel: true })],
      blanks: [blank('B1', 0, 950, [170, 'shelf']), blank('B1', 953.2, 950, [170, 'shelf'])],
    },
    { planerWidth: null, planerSled: false },
  ),
} satisfies Record<string, MillingInput>;
