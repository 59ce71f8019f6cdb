import { badNumber, badRange } from '../answer/bad-number.ts';
import type { Outcome } from '../answer/problem.ts';
import { type Range, range } from '../answer/range.ts';
import type { Finish } from './finish.ts';

const longest = { least: 0, most: 120 * 86400 };

/** What a can may say instead of the table. */
const figures = [
  ['coverage', 'The spreading rate', 'm2PerLitre', { above: 0, most: 200 }],
  ['waitSeconds', 'The wait between coats', 'seconds', longest],
  ['wipeOffSeconds', 'The time until wiping off', 'seconds', longest],
  ['useAfterSeconds', 'The time until use', 'seconds', longest],
  ['cureSeconds', 'The time to full cure', 'seconds', longest],
] as const;

/** What the maker has typed in from the can: it wins over the table. */
export type FinishLabel = Partial<Pick<Finish, (typeof figures)[number][0]>>;

/**
 * A kind of finish with the can's own figures in place of the table's.
 *
 * @param finish a row of the finishes' table
 * @param label figures from the can: m2 per litre, seconds
 * @returns the finish, its source `label` when anything was typed in; never in use after its full cure
 * @valid figures at about 20 degrees Celsius
 * @errors a range reversed, zero or absurd; use after full cure
 * @example withFinishLabel(finishById('oil-varnish'), { coverage: range(10, 12) })
 *   // => { coverage: { least: 10, most: 12 }, source: 'label' }
 * @source the label
 */
export function withFinishLabel(finish: Finish, label: FinishLabel): Outcome<Finish> {
  for (const [field, name, unit, limits] of figures) {
    const typed = label[field];
    const wrong = typed && badRange(field, name, typed, unit, limits);
    if (wrong) return wrong;
  }
  const { useAfterSeconds: use, cureSeconds: cure } = label;
  const tooSoon =
    use && cure && badNumber('cureSeconds', 'The time to full cure', cure.most, 'seconds', { least: use.least });
  if (tooSoon) return tooSoon;
  if (Object.keys(label).length === 0) return finish;
  // Where the can gives one of the two, the table's other must not contradict it.
  const bound = (usual: Range, by: Range | undefined, pick: typeof Math.min) =>
    by ? range(pick(usual.least, by.least), pick(usual.most, by.most)) : usual;
  return {
    ...finish,
    useAfterSeconds: bound(finish.useAfterSeconds, cure, Math.min),
    cureSeconds: bound(finish.cureSeconds, use, Math.max),
    ...label,
    source: 'label',
  };
}
