import { badRange } from '../answer/bad-number.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { seconds } from '../answer/quantity.ts';
import type { Finish } from './finish.ts';

/** What the maker has typed in from the can: it wins over the table. */
export type FinishLabel = Partial<
  Pick<
    Finish,
    | 'name'
    | 'coverage'
    | 'coats'
    | 'waitSeconds'
    | 'wipeOffSeconds'
    | 'useAfterSeconds'
    | 'cureSeconds'
    | 'dryingOil'
    | 'solvent'
    | 'waterBorne'
    | 'solidsPercent'
  >
>;

const longestSeconds = 120 * 86400;

/**
 * A kind of finish with the can's own figures in place of the table's.
 *
 * @param finish a row of the finishes' table
 * @param label figures from the can: m2 per litre, seconds, percent
 * @returns the finish, its source `label` when anything was typed in
 *
 * Valid: figures at about 20 degrees Celsius.
 * Errors: a range reversed, zero or absurd; use after full cure.
 * Example: a can that says 10 to 12 m2 per litre: coverage 10 to 12, all else as the table has it.
 * Source: the label.
 */
export function withFinishLabel(finish: Finish, label: FinishLabel): Outcome<Finish> {
  const waits = ['waitSeconds', 'wipeOffSeconds', 'useAfterSeconds', 'cureSeconds'] as const;
  const names = {
    waitSeconds: 'The wait between coats',
    wipeOffSeconds: 'The time until wiping off',
    useAfterSeconds: 'The time until use',
    cureSeconds: 'The time to full cure',
  };
  const { coverage, coats, solidsPercent } = label;
  const bad =
    (coverage && badRange('coverage', 'The spreading rate', coverage, 'm2PerLitre', { above: 0, most: 200 })) ??
    (coats && badRange('coats', 'The number of coats', coats, 'count', { least: 1, most: 20, whole: true })) ??
    (solidsPercent &&
      badRange('solidsPercent', 'The volume solids', solidsPercent, 'percent', { least: 1, most: 100 }));
  if (bad) return bad;
  for (const wait of waits) {
    const typed = label[wait];
    const wrong = typed && badRange(wait, names[wait], typed, 'seconds', { least: 0, most: longestSeconds });
    if (wrong) return wrong;
  }
  const { useAfterSeconds: use, cureSeconds: cure } = label;
  if (use && cure && use.least > cure.most)
    return problem('cureSeconds', 'Use after {use}, but full cure after {cure}? Check the can.', {
      use: seconds(use.least),
      cure: seconds(cure.most),
    });
  return Object.keys(label).length === 0 ? finish : { ...finish, ...label, source: 'label' };
}
