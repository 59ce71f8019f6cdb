/** Means over the forty woods of the species table that have all three figures. */
const radialPart = 0.35;
const tangentialPart = 0.63;

/**
 * A rough guess at how a wood shrinks along the radius and along the rings when only its volume's shrinkage is known.
 *
 * @param volumetric shrinkage in percent
 * @returns radial and tangential shrinkage in percent
 * @valid as a guess, to be shown as one: over the table's woods it is off by up to 37 % of the radial and 24 % of the
 *   tangential figure
 * @example shrinkageFromVolumetric(11.5) // => { radial: 4.0, tangential: 7.2 }
 * @source an assumption, from the mean proportions in Wood handbook (FPL-GTR-190), Tables 4-3 and 4-4
 */
export function shrinkageFromVolumetric(volumetric: number): { radial: number; tangential: number } {
  return { radial: radialPart * volumetric, tangential: tangentialPart * volumetric };
}
