import { isProblem } from '../../core/answer/problem.ts';
import type { Range } from '../../core/answer/range.ts';
import type { SourceId } from '../../core/answer/source-id.ts';
import { equilibriumMoisture } from '../../core/moisture/equilibrium-moisture.ts';
import { climates } from '../../tables/climates.ts';
import { interiorTargets } from '../../tables/interior-targets.ts';

export interface MoistureTarget {
  readonly id: string;
  readonly name: string;
  /** Percent. */
  readonly band: Range;
  readonly source: SourceId;
}

/** The bands a board may be dried to, by the place where the piece will live: published for interiors, or from the air of a climate. */
export const moistureTargets: readonly MoistureTarget[] = [
  ...interiorTargets.map(({ id, name, band }) => ({ id, name: `Indoors, ${lower(name)}`, band, source: band.source })),
  ...climates.flatMap(({ id, name, dry, wet, source }) => {
    const ends = [equilibriumMoisture(dry), equilibriumMoisture(wet)].map((end) => (isProblem(end) ? 0 : end.value));
    return { id, name, band: { least: Math.min(...ends), most: Math.max(...ends) }, source };
  }),
];

export const targetById = (id = 'most'): MoistureTarget =>
  moistureTargets.find((target) => target.id === id) ?? (moistureTargets[0] as MoistureTarget);

function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}
