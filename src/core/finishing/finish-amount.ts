import { badRange, firstBad } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { factor, litres, m2, percent, quantity } from '../answer/quantity.ts';
import { likely, type Range } from '../answer/range.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';

/** Added for what stays in brush, rag and tray, or drifts past, as a share of what ends up on the wood. */
export const finishLoss = { rag: 0.1, brush: 0.1, roller: 0.15, pad: 0.1, spray: 0.6 } as const;

export type FinishMethod = keyof typeof finishLoss;

/** More coats than this is a slip of the finger. */
export const mostCoats = 20;

export interface LikelyRange extends Range {
  readonly likely: number;
}

/**
 * Amounts together.
 *
 * @param amounts any number, all in one unit
 * @returns their sum, end by end
 * @valid amounts that lean the same way, as those of one can do
 * @example inAll([{ least: 1, likely: 2, most: 3 }, { least: 1, likely: 1, most: 1 }]) // => { least: 2, likely: 3, most: 4 }
 * @source arithmetic
 */
export function inAll(amounts: readonly LikelyRange[]): LikelyRange {
  const sum = (end: keyof LikelyRange) => amounts.reduce((so, one) => so + one[end], 0);
  return { least: sum('least'), likely: sum('likely'), most: sum('most') };
}

export interface FinishAmount {
  /** Litres for each coat, in order. */
  readonly coats: readonly LikelyRange[];
  /** Litres in all. */
  readonly total: LikelyRange;
}

export interface FinishUse {
  readonly areaM2: number;
  /** m2 per litre on sealed wood */
  readonly coverage: Range;
  readonly coats: number;
  /** Share added for loss, 0 to 1. */
  readonly loss?: number;
  /** How many times as much the first coat takes; 1 on sealed wood. */
  readonly firstCoat?: number;
  /** Where the spreading rate came from. */
  readonly source: SourceId;
}

/**
 * The finish that an area takes, per coat and in all.
 *
 * @param use area in m2, spreading rate in m2 per litre, coats, loss as a share, thirst of the first coat as a factor
 * @returns litres for each coat and in all: least at the far end of the rate, most at the near end, likely in the
 *   middle
 * @valid one finish on one wood; ask once for each and add
 * @errors an empty area, a rate of 0, coats outside 1 to 20, a loss above 1, a factor outside 1 to 5
 * @example finishAmount({ areaM2: 3.2, coverage: range(12), coats: 2, loss: 0.1, source: 'label' }).value
 *   // => { total: { likely: 0.587 } }
 * @source the rate's own; loss by method and thirst are common practice
 */
export function finishAmount(use: FinishUse): Outcome<Worked<FinishAmount>> {
  const { areaM2, coverage, coats, loss = 0, firstCoat = 1, source } = use;
  const bad =
    badRange('coverage', 'The spreading rate', coverage, 'm2PerLitre', { above: 0, most: 200 }) ??
    firstBad([
      ['areaM2', 'The area', areaM2, 'm2', { above: 0, most: 1000 }],
      ['coats', 'The number of coats', coats, 'count', { least: 1, most: mostCoats, whole: true }],
      ['loss', 'The loss', loss, 'factor', { least: 0, most: 1 }],
      ['firstCoat', 'The thirst of the first coat', firstCoat, 'factor', { least: 1, most: 5 }],
    ]);
  if (bad) return bad;

  const coat = (thirst: number): LikelyRange => {
    const at = (rate: number) => (areaM2 / rate) * thirst * (1 + loss);
    return { least: at(coverage.most), likely: at(likely(coverage)), most: at(coverage.least) };
  };
  const each = Array.from({ length: coats }, (_, index) => coat(index === 0 ? firstCoat : 1));
  const total = inAll(each);
  const steps = each.map<WorkingStep>((one, index) => ({
    finds: `coat ${index + 1}`,
    by: phrase`${m2(areaM2)} at ${quantity(likely(coverage), 'm2PerLitre')}${
      index === 0 && firstCoat !== 1 ? phrase`, times ${factor(firstCoat)} on bare wood` : ''
    }, and ${percent(loss * 100)} for loss.`,
    gives: litres(one.likely),
  }));
  return {
    value: { coats: each, total },
    working: {
      steps,
      sources: [...new Set<SourceId>([source, 'common-practice'])],
    },
  };
}
