import { badNumber } from '../answer/bad-number.ts';
import { nextStep } from '../answer/next-step.ts';
import { oneStep } from '../answer/one-step.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { factor, m3, percent, quantity } from '../answer/quantity.ts';
import type { SourceId } from '../answer/source-id.ts';
import type { Worked } from '../answer/worked.ts';

export interface BoardWeight {
  readonly kilograms: Worked;
  /** Said when the board is heavier than one person should lift alone. */
  readonly caution?: Phrase;
}

/** Where the caution begins: a common limit for one person in good conditions. */
const heavyForOneKg = 23;

/**
 * A board's weight from its wood's specific gravity and its moisture: density = 1000 × G × (1 + M / 100).
 *
 * @param wood specific gravity (ovendry mass over volume at 12 %) with its source, moisture in percent
 * @param cubicMetres exact volume of the board, m3
 * @returns weight in kg by way of the density, and a caution from 23 kg on (common practice)
 * @valid near 12 % moisture, where the handbook's volume is taken; at 6 or 30 % the volume, and so the result, is a few
 *   percent off. Trees differ too: about a tenth either way
 * @errors missing figures, G outside 0.05 to 1.4, moisture outside 0 to 200 %, volume not above 0 or above 5 m3
 * @example boardWeight({ specificGravity: 0.5, source: 'label', moisture: 12 }, 0.01966)
 *   // => { kilograms: { value: 11.0 } }
 * @source Wood handbook, density from specific gravity and moisture (from memory)
 */
export function boardWeight(
  wood: { readonly specificGravity: number; readonly source: SourceId; readonly moisture: number },
  cubicMetres: number,
): Outcome<BoardWeight> {
  const { specificGravity, moisture, source } = wood;
  const bad =
    badNumber('specificGravity', 'The specific gravity', specificGravity, 'factor', { least: 0.05, most: 1.4 }) ??
    badNumber('moisture', 'The moisture', moisture, 'percent', { least: 0, most: 200 }) ??
    badNumber('cubicMetres', 'The volume', cubicMetres, 'm3', { above: 0, most: 5 });
  if (bad) return bad;
  const density = oneStep(
    'density',
    phrase`1000 kg/m³ × specific gravity ${factor(specificGravity)} × (1 + moisture ${percent(moisture)})`,
    quantity(1000 * specificGravity * (1 + moisture / 100), 'kgPerM3'),
    [source],
    phrase`Near 12% moisture; trees differ by about a tenth.`,
  );
  const weight = quantity(density.value * cubicMetres, 'kilograms');
  const kilograms = nextStep(density, 'weight', phrase`density × volume ${m3(cubicMetres)}`, weight, [
    'wood-handbook-memory',
  ]);
  return {
    kilograms,
    ...(weight.value > heavyForOneKg && {
      caution: phrase`About ${weight}: over ${quantity(heavyForOneKg, 'kilograms')}, a common limit for one person. Lift with help, or slide one end at a time.`,
    }),
  };
}
