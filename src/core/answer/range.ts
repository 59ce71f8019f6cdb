/** A figure that is only known to lie between two values, both in the unit that its name says. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/**
 * A range from its ends; of one value when only one is given.
 *
 * @param least in any unit
 * @param most in the same
 * @returns the range
 * @example range(10, 12) // => { least: 10, most: 12 }
 */
export const range = (least: number, most: number = least): Range => ({ least, most });

/**
 * The middle of a range: what is taken as likely where nothing better is known.
 *
 * @param range in any unit
 * @returns its middle
 * @example likely({ least: 10, most: 12 }) // => 11
 */
export const likely = ({ least, most }: Range): number => (least + most) / 2;

/**
 * The range with both ends multiplied by a factor of at least 0.
 *
 * @param range in any unit
 * @param by a factor of at least 0
 * @returns the range
 * @example scaled({ least: 10, most: 12 }, 2) // => { least: 20, most: 24 }
 */
export const scaled = ({ least, most }: Range, by: number): Range => ({ least: least * by, most: most * by });
