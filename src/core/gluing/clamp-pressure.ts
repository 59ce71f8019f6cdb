import { firstBad } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import { factor, kilopascals } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

/** The ends of the line: specific gravity against kPa. The pressures are the handbook's, the gravities an assumption. */
const lightest = { specificGravity: 0.35, kPa: 700 } as const;
const densest = { specificGravity: 0.7, kPa: 1700 } as const;

/**
 * The pressure that a glue line asks for, by how dense the wood is.
 *
 * @param specificGravity ovendry mass over the volume at 12 percent moisture, relative to water
 * @param pressureShare share of it that the adhesive wants: 1 for glues squeezed thin, 0.1 for epoxy
 * @returns pressure, kPa
 * @valid straight line from 700 kPa at 0.35 to 1700 kPa at 0.70, level beyond; specific gravity 0.1 to 1.3
 * @errors a specific gravity or share outside its range
 * @example clampPressure(0.5) // => { value: 1128.6 }
 * @source 700 to 1700 kPa, Wood Handbook chapter 10, from memory; that the line is straight, and its ends, are
 *   assumptions
 */
export function clampPressure(specificGravity: number, pressureShare = 1): Outcome<Worked> {
  const bad = firstBad([
    ['specificGravity', 'The specific gravity', specificGravity, 'factor', { least: 0.1, most: 1.3 }],
    ['pressureShare', 'The share of the pressure', pressureShare, 'factor', { above: 0, most: 1 }],
  ]);
  if (bad) return bad;
  const along = (specificGravity - lightest.specificGravity) / (densest.specificGravity - lightest.specificGravity);
  const full = lightest.kPa + Math.min(1, Math.max(0, along)) * (densest.kPa - lightest.kPa);
  const value = full * pressureShare;
  return {
    value,
    working: {
      steps: [
        workingStep(
          'pressure for this wood',
          phrase`Straight from ${kilopascals(lightest.kPa)} at specific gravity ${factor(lightest.specificGravity)} to ${kilopascals(densest.kPa)} at ${factor(densest.specificGravity)}; here ${factor(specificGravity)}.`,
          kilopascals(full),
        ),
        ...(pressureShare === 1
          ? []
          : [
              workingStep(
                'pressure for this glue',
                phrase`${factor(pressureShare)} of that: pressed hard this glue starves.`,
                kilopascals(value),
              ),
            ]),
      ],
      holds: phrase`Joints that close by hand: pressure does not mend one that is not straight.`,
      sources: ['wood-handbook-memory', 'assumption'],
    },
  };
}
