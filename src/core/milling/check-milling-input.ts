import { badNumber } from '../answer/bad-number.ts';
import { type Problem, problem, within } from '../answer/problem.ts';
import type { CutBlank } from '../breakdown/problem-types.ts';
import { boardProblem } from './flat-thickness.ts';
import { limitedMachines } from './machine-limits.ts';
import type { MillingInput } from './milling-input.ts';

type Found = Problem | undefined;

/** Rounding that a plan is forgiven, in mm. */
const slack = 0.01;

/** Why the sequence can't be made from this input, if it can't. */
export const checkMillingInput = (input: MillingInput): Found =>
  [shopProblems, boardProblems, partProblems, blankProblems]
    .flatMap((problemsOf) => problemsOf(input))
    .find((found) => found !== undefined);

/** What comes off at each cut, with the most that isn't a slip of the finger, in mm. */
const allowances = [
  ['ripKerf', 'The rip kerf', 25],
  ['crosscutKerf', 'The crosscut kerf', 25],
  ['edgeAllowance', 'The edge allowance', 25],
  ['faceAllowance', 'The face allowance', 25],
  ['lengthAllowance', 'The length allowance', 500],
] as const;

const shopProblems = ({ shop, limits }: MillingInput): Found[] => [
  ...(['jointer', 'planer'] as const).map((machine) => {
    const width = shop[`${machine}Width`];
    return width === null
      ? undefined
      : badNumber(`shop.${machine}Width`, `The ${machine}`, width, 'mm', { least: 50, most: 1500 });
  }),
  ...allowances.map(([field, name, most]) => badNumber(`shop.${field}`, name, shop[field], 'mm', { least: 0, most })),
  ...limitedMachines.flatMap((machine) =>
    Object.entries(limits[machine]).map(([dimension, { mm }]) =>
      badNumber(`limits.${machine}.${dimension}`, 'The limit', mm, 'mm', { above: 0, most: 3000 }),
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
      badNumber(`parts.${index}.${field}`, `The ${field}`, part[field], field === 'quantity' ? 'count' : 'mm', {
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
