import { badNumber } from '../answer/bad-number.ts';
import type { Outcome } from '../answer/problem.ts';
import { type LimitOverrides, limitedMachines, type MachineLimit, type MachineLimits } from './machine-limits.ts';

/** No limit of a hand-fed machine lies beyond this; a larger figure is a slip of the finger. */
const mostSensible: Readonly<Record<keyof MachineLimit, number>> = {
  leastLength: 2000,
  leastWidth: 500,
  leastThickness: 100,
  depthPerPass: 200,
};

/**
 * The limits of the maker's own machines: the figures of their manuals where typed in, else the defaults.
 *
 * @param defaults limits in mm, each with its source
 * @param own figures from the manuals in mm, for any machine and dimension
 * @returns limits in mm; those from a manual carry the source `label`
 * @valid hand-fed machines of a small shop
 * @errors a figure that is not above zero, or beyond what any such machine has
 * @example ownLimits(machineLimits, { jointer: { leastLength: 250 } }).jointer
 *   // => { leastLength: { mm: 250, source: 'label' } }
 * @source the machine's manual comes first (common practice)
 */
export function ownLimits(defaults: MachineLimits, own: LimitOverrides): Outcome<MachineLimits> {
  const merged: Record<string, MachineLimit> = {};
  for (const machine of limitedMachines) {
    let limit = defaults[machine];
    for (const dimension of Object.keys(mostSensible) as (keyof MachineLimit)[]) {
      const figure = own[machine]?.[dimension];
      if (figure === undefined) continue;
      const limits = { above: 0, most: mostSensible[dimension] };
      const wrong = badNumber(`${machine}.${dimension}`, 'The manual’s figure', figure, 'mm', limits);
      if (wrong) return wrong;
      limit = { ...limit, [dimension]: { mm: figure, source: 'label' } };
    }
    merged[machine] = limit;
  }
  return { ...defaults, ...merged };
}
