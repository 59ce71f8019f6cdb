import { badRange, firstBad } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { factor, grams, m2, percent, quantity } from '../answer/quantity.ts';
import { likely, type Range, scaled } from '../answer/range.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';
import { badSeams, type Seam, seamsArea } from './seam.ts';

/** How glue is put on, with the share of what is poured that stays in the tool and the tray. */
export const glueLoss = { bottle: 0.02, brush: 0.1, roller: 0.2, spreader: 0.05 } as const;

export type GlueTool = keyof typeof glueLoss;

export interface GlueAmount {
  readonly areaM2: number;
  /** With what the tool keeps. */
  readonly grams: Range;
  readonly likelyGrams: number;
  readonly likelyMillilitres: number;
}

export interface GlueUse {
  readonly seams: readonly Seam[];
  /** Grams on each m2 of joint, both faces together. */
  readonly gramsPerM2: Range;
  /** kg/m3, which is grams per litre. */
  readonly kgPerM3: number;
  /** Share of what is poured that the tool and the tray keep, 0 to 0.5. */
  readonly loss?: number;
  /** Where the spread came from. */
  readonly source: SourceId;
}

/**
 * The glue that the seams of one stage take.
 *
 * @param use seams in mm, spread in grams per m2 of joint, density in kg/m3, loss as a share of what is poured
 * @returns joint area in m2; glue to pour out in grams, as a range and its middle, and in millilitres
 * @valid flat, close joints. Open pores and end grain take more
 * @errors no seams, a seam without a size, a spread outside 20 to 2000 g/m2, a loss above one half
 * @example glueAmount({ seams: [{ length: 1200, width: 20 }], gramsPerM2: range(200), kgPerM3: 1100, loss: 0.1, source: 'label' })
 *   .value // => { areaM2: 0.024, likelyGrams: 5.33 }
 * @source spread from the table or the label; loss by tool is common practice
 */
export function glueAmount({ seams, gramsPerM2, kgPerM3, loss = 0, source }: GlueUse): Outcome<Worked<GlueAmount>> {
  const bad =
    badSeams(seams) ??
    badRange('gramsPerM2', 'The spread', gramsPerM2, 'gramsPerM2', { least: 20, most: 2000 }) ??
    firstBad([
      ['kgPerM3', 'The density', kgPerM3, 'kgPerM3', { least: 500, most: 3000 }],
      ['loss', 'The loss', loss, 'factor', { least: 0, most: 0.5 }],
    ]);
  if (bad) return bad;
  const areaM2 = seamsArea(seams);
  const poured = scaled(gramsPerM2, areaM2 / (1 - loss));
  const likelyGrams = likely(poured);
  return {
    value: { areaM2, grams: poured, likelyGrams, likelyMillilitres: (likelyGrams * 1000) / kgPerM3 },
    working: {
      steps: [
        workingStep(
          'glue in the joint',
          phrase`${m2(areaM2)}, length times width of each seam, at ${quantity(likely(gramsPerM2), 'gramsPerM2')}.`,
          grams(areaM2 * likely(gramsPerM2)),
        ),
        workingStep('glue to pour out', phrase`Tool and tray keep ${percent(loss * 100)} of it.`, grams(likelyGrams)),
        workingStep(
          'by volume',
          phrase`Grams over ${factor(kgPerM3 / 1000)} g/ml.`,
          quantity((likelyGrams * 1000) / kgPerM3, 'millilitres'),
        ),
      ],
      holds: phrase`Flat, close joints. Open pores and end grain take more.`,
      sources: [...new Set<SourceId>([source, 'common-practice'])],
    },
  };
}
