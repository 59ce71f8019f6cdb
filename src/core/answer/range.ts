/** A figure that is only known to lie between two values, both in the unit that its name says. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/** A range from its ends; of one value when only one is given. */
export const range = (least: number, most: number = least): Range => ({ least, most });

/** The middle of a range: what is taken as likely where nothing better is known. */
export const likely = ({ least, most }: Range): number => (least + most) / 2;

/** The range with both ends multiplied by a factor of at least 0. */
export const scaled = ({ least, most }: Range, by: number): Range => ({ least: least * by, most: most * by });
