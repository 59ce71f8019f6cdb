/** Units in which the core speaks. Text in the maker's own units is made only where it is shown. */
export type Unit =
  | 'mm'
  | 'mm2'
  | 'm2'
  | 'm3'
  | 'woodM3'
  | 'boardFeet'
  | 'litres'
  | 'millilitres'
  | 'm2PerLitre'
  | 'grams'
  | 'gramsPerM2'
  | 'kilograms'
  | 'kgPerM3'
  | 'seconds'
  | 'celsius'
  | 'percent'
  | 'degrees'
  | 'newtons'
  | 'kilopascals'
  | 'micrometres'
  | 'money'
  | 'count'
  | 'factor';

/** A number with its unit, so that it can be shown in the maker's units without the core knowing them. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
}

const of =
  (unit: Unit) =>
  (value: number): Quantity => ({ value, unit });

export const mm = of('mm');
export const m2 = of('m2');
export const m3 = of('m3');
/** Cubic metres of wood, shown in what a maker buys it by: board feet beside inches. */
export const wood = of('woodM3');
export const boardFeet = of('boardFeet');
export const litres = of('litres');
export const grams = of('grams');
export const seconds = of('seconds');
export const celsius = of('celsius');
export const percent = of('percent');
export const degrees = of('degrees');
export const newtons = of('newtons');
export const kilopascals = of('kilopascals');
export const money = of('money');
export const count = of('count');
export const factor = of('factor');
/**
 * A number with its unit.
 *
 * @param value in the unit
 * @param unit one of the core's
 * @returns the quantity
 * @example quantity(105, 'mm') // => { value: 105, unit: 'mm' }
 */
export const quantity = (value: number, unit: Unit): Quantity => ({ value, unit });
