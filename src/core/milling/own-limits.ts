import { type LimitedMachine, limitedMachines, type MachineLimit, type MachineLimits } from './machine-limits.ts';

/** The figures that a manual may name, and what each limits. Beyond `most` mm it is a slip of the finger. */
export const manualFigures = [
  { figure: 'length', limits: 'leastLength', most: 2000 },
  { figure: 'width', limits: 'leastWidth', most: 500 },
  { figure: 'thickness', limits: 'leastThickness', most: 100 },
  { figure: 'depth', limits: 'depthPerPass', most: 200 },
] as const;
export type ManualFigure = (typeof manualFigures)[number]['figure'];

/** The maker's own figures from the machines' manuals, in mm. */
export type ManualLimits = { readonly [M in LimitedMachine]?: { readonly [F in ManualFigure]?: number | undefined } };

/**
 * The limits of the maker's own machines: the figures of their manuals where typed in, else the defaults.
 *
 * @param defaults limits in mm, each with its source
 * @param own figures from the manuals in mm, for any machine and dimension
 * @returns limits in mm; those from a manual carry the source `label`
 * @valid hand-fed machines of a small shop; nonsense among the figures is refused with what the limits go into
 * @example ownLimits(machineLimits, { jointer: { length: 250 } }).jointer
 *   // => { leastLength: { mm: 250, source: 'label' } }
 * @source the machine's manual comes first (common practice)
 */
export function ownLimits(defaults: MachineLimits, own: ManualLimits): MachineLimits {
  const merged: Record<string, MachineLimit> = {};
  for (const machine of limitedMachines) {
    let all = defaults[machine];
    for (const { figure, limits } of manualFigures) {
      const mm = own[machine]?.[figure];
      if (mm !== undefined) all = { ...all, [limits]: { mm, source: 'label' } };
    }
    merged[machine] = all;
  }
  return { ...defaults, ...merged };
}
