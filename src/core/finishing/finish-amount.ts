import { badRange, firstBad, type NumberCheck } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { factor, litres, m2, percent, quantity } from '../answer/quantity.ts';
import { likely, type Range } from '../answer/range.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { Worked, WorkingStep } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

/** Added for what stays in brush, rag and tray, or drifts past, as a share of what ends up on the wood. */
export const finishLoss = { rag: 0.1, brush: 0.1, roller: 0.15, pad: 0.1, spray: 0.6 } as const;

export type FinishMethod = keyof typeof finishLoss;

/** More coats than this is a slip of the finger. */
export const mostCoats = 20;

export interface LikelyRange extends Range {
  readonly likely: number;
}

export interface FinishAmount {
  /** Litres for each coat, in order. */
  readonly coats: readonly LikelyRange[];
  /** Litres in all. */
  readonly total: LikelyRange;
}

/** One wood, outside or inside. */
export interface CoatedArea {
  /** What it is, where there are several. */
  readonly what?: string;
  readonly areaM2: number;
  readonly coats: number;
  /** How many times as much the first coat takes; 1 on sealed wood. */
  readonly firstCoat?: number;
}

export interface FinishUse {
  readonly areas: readonly CoatedArea[];
  /** m2 per litre on sealed wood */
  readonly coverage: Range;
  /** Share added for loss, 0 to 1. */
  readonly loss?: number;
  /** Where the spreading rate came from. */
  readonly source: SourceId;
}

function inAll(amounts: readonly LikelyRange[]): LikelyRange {
  const sum = (end: keyof LikelyRange) => amounts.reduce((so, one) => so + one[end], 0);
  return { least: sum('least'), likely: sum('likely'), most: sum('most') };
}

/**
 * The finish that areas take out of one can, per coat and in all: those with fewer coats drop out of the later ones.
 *
 * @param use areas in m2, each with its coats and the thirst of its first as a factor; spreading rate in m2 per litre,
 *   loss as a share
 * @returns litres for each coat and in all: least at the far end of the rate, most at the near end, likely in the
 *   middle
 * @valid one finish; one area for each wood that drinks otherwise
 * @errors an empty area, a rate of 0, coats outside 1 to 20, a loss above 1, a factor outside 1 to 5
 * @example finishAmount({ areas: [{ areaM2: 3.2, coats: 2 }], coverage: range(12), loss: 0.1, source: 'label' }).value
 *   // => { total: { likely: 0.587 } }
 * @source the rate's own; loss by method and thirst are common practice
 */
export function finishAmount({ areas, coverage, loss = 0, source }: FinishUse): Outcome<Worked<FinishAmount>> {
  const bad =
    badRange('coverage', 'The spreading rate', coverage, 'm2PerLitre', { above: 0, most: 200 }) ??
    firstBad([
      ['loss', 'The loss', loss, 'factor', { least: 0, most: 1 }],
      ...areas.flatMap(({ areaM2, coats, firstCoat = 1 }, index): NumberCheck[] => [
        [`areas.${index}.areaM2`, 'The area', areaM2, 'm2', { above: 0, most: 1000 }],
        [`areas.${index}.coats`, 'The number of coats', coats, 'count', { least: 1, most: mostCoats, whole: true }],
        [`areas.${index}.firstCoat`, 'The thirst of the first coat', firstCoat, 'factor', { least: 1, most: 5 }],
      ]),
    ]);
  if (bad) return bad;

  const coats = Array.from({ length: Math.max(0, ...areas.map((one) => one.coats)) }, (): LikelyRange[] => []);
  const steps: WorkingStep[] = [];
  for (const { what, areaM2, coats: number, firstCoat = 1 } of areas)
    for (let index = 0; index < number; index++) {
      const thirst = index === 0 ? firstCoat : 1;
      const at = (rate: number) => (areaM2 / rate) * thirst * (1 + loss);
      const likeliest = at(likely(coverage));
      coats[index]?.push({ least: at(coverage.most), likely: likeliest, most: at(coverage.least) });
      steps.push(
        workingStep(
          `${what ? `${what}, ` : ''}coat ${index + 1}`,
          phrase`${m2(areaM2)} at ${quantity(likely(coverage), 'm2PerLitre')}${
            thirst === 1 ? '' : phrase`, times ${factor(thirst)} on bare wood`
          }, and ${percent(loss * 100)} for loss.`,
          litres(likeliest),
        ),
      );
    }
  const each = coats.map(inAll);
  const total = inAll(each);
  const by = phrase`All of them; ${litres(total.least)} to ${litres(total.most)} at the ends of the rate.`;
  return {
    value: { coats: each, total },
    working: {
      steps: [...steps, workingStep('in all', by, litres(total.likely))],
      sources: [...new Set<SourceId>([source, 'common-practice'])],
    },
  };
}
