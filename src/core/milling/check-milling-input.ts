import { badNumber } from '../answer/bad-number.ts';
import { type Problem, problem, within } from '../answer/problem.ts';
import type { CutBlank } from '../breakdown/problem-types.ts';
import { boardProblem } from './flat-thickness.ts';
import { limitedMachines } from './machine-limits.ts';
import type { MillingInput, MillingShop } from './milling-input.ts';

type Found = Problem | undefined;

/** Rounding that a plan is forgiven, in mm. */
const slack = 0.01;

/** Why the sequence can't be made from this input, if it can't. */
export const checkMillingInput = (input: MillingInput): Found =>
  [shopProblems, boardProblems, partProblems, blankProblems]
    .flatMap((problemsOf) => problemsOf(input))
    .find((found) => found !== undefined);

/** `edgeAllowance` as a sentence begins: `The edge allowance`. */
const named = (field: string) => `The ${field.replace(/[A-Z]/, (letter) => ` ${letter.toLowerCase()}`)}`;

/** Beyond these a figure of the shop is a slip of the finger, in mm. */
const machineWidth = { least: 50, most: 1500 };
const allowances = {
  ripKerf: 25,
  crosscutKerf: 25,
  edgeAllowance: 25,
  faceAllowance: 25,
  lengthAllowance: 500,
} satisfies Partial<Record<keyof MillingShop, number>>;

const shopProblems = ({ shop, limits }: MillingInput): Found[] => [
  ...(['jointerWidth', 'planerWidth'] as const).map((field) => {
    const width = shop[field];
    return width === null ? undefined : badNumber(`shop.${field}`, named(field), width, 'mm', machineWidth);
  }),
  ...Object.entries(allowances).map(([field, most]) =>
    badNumber(`shop.${field}`, named(field), shop[field as keyof typeof allowances], 'mm', { least: 0, most }),
  ),
  ...limitedMachines.flatMap((machine) =>
    Object.entries(limits[machine]).map(([field, { mm }]) =>
      badNumber(`limits.${machine}.${field}`, named(field), mm, 'mm', { above: 0, most: 3000 }),
    ),
  ),
];

const boardProblems = ({ boards }: MillingInput): Found[] =>
  boards.flatMap((board, index) => {
    const wrong = boardProblem(board);
    return [
      wrong && within(wrong, `boards.${index}`),
      boards.findIndex(({ id }) => id === board.id) < index
        ? problem(`boards.${index}.id`, 'Two boards carry the same mark.')
        : undefined,
    ];
  });

const partProblems = ({ parts }: MillingInput): Found[] =>
  parts.flatMap(({ folds = [], ...part }, index) => [
    ...(['length', 'width', 'thickness', 'quantity'] as const).map((field) =>
      badNumber(`parts.${index}.${field}`, named(field), part[field], field === 'quantity' ? 'count' : 'mm', {
        above: 0,
        most: 20000,
      }),
    ),
    badNumber(
      `parts.${index}.folds`,
      'All sections',
      folds.reduce((sum, { length }) => sum + length, 0),
      'mm',
      { most: part.length + slack },
    ),
  ]);

const blankProblems = (input: MillingInput): Found[] =>
  input.blanks.flatMap((blank, index) =>
    blankProblem(blank, input)
      .map((found) => found && within(found, `blanks.${index}`))
      .concat(
        input.blanks.slice(0, index).some((other) => overlap(other, blank))
          ? problem(`blanks.${index}.start`, 'Two blanks overlap on this board.')
          : [],
      ),
  );

function blankProblem(blank: CutBlank, { boards, parts, shop }: MillingInput): Found[] {
  const board = boards.find(({ id }) => id === blank.board);
  if (!board) return [problem('board', 'This board is not in the stack.')];
  const { start, length, strips } = blank;
  return [
    badNumber('start', 'The start of the blank', start, 'mm', { least: 0 }),
    badNumber('length', 'The blank', length, 'mm', { above: 0, most: board.length - start + slack }),
    strips.length === 0 ? problem('strips', 'The blank has no strips.') : undefined,
    ...strips.flatMap(({ part: id, width, spoilt }, place) => {
      if (spoilt) return [];
      const part = parts.find((one) => one.id === id);
      if (!part) return problem(`strips.${place}.part`, 'There is no such part.');
      const least = (part.panel ? shop.edgeAllowance : part.width) - slack;
      return [
        badNumber(`strips.${place}.width`, 'The strip', width, 'mm', { above: 0, least }),
        badNumber('length', 'The blank', length, 'mm', { least: part.length - slack }),
      ];
    }),
    badNumber(
      'strips',
      'All strips with kerfs',
      strips.reduce((sum, { width }) => sum + width + shop.ripKerf, -shop.ripKerf),
      'mm',
      { most: board.width + slack },
    ),
  ];
}

const overlap = (one: CutBlank, other: CutBlank): boolean =>
  one.board === other.board &&
  one.start < other.start + other.length - slack &&
  other.start < one.start + one.length - slack;
