/** How a board lies in the log, seen at its end: rings along the face, at about 45 degrees, or across it. */
export type Cut = 'flat' | 'rift' | 'quarter';

export const cuts: readonly Cut[] = ['flat', 'rift', 'quarter'];

/**
 * The figure for the width of a board of that cut, from the figures along the radius and along the rings.
 *
 * @param cut flat, rift or quarter
 * @param figures along the radius and along the rings, in one unit, as far as they are known
 * @returns the figure across the board's face, in that unit; undefined when one that it needs is unknown
 * @valid rings at 0, 45 or 90 degrees to the face; a real board lies between. For rift it is the mean of the two, which
 *   is what the strain of a piece turned by 45 degrees comes to (radial x cos2 + tangential x sin2)
 * @example acrossFace('rift', { radial: 0.00126, tangential: 0.00248 }) // => 0.00187
 * @source Wood handbook (FPL-GTR-190), chapter 13, for flat and quarter; the mean for rift is an assumption from
 *   geometry
 */
export function acrossFace(
  cut: Cut,
  { radial, tangential }: { readonly radial?: number; readonly tangential?: number } = {},
): number | undefined {
  if (cut === 'quarter') return radial;
  if (cut === 'flat') return tangential;
  return radial === undefined || tangential === undefined ? undefined : (radial + tangential) / 2;
}
