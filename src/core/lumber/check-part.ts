import { badNumber, type Limits } from '../answer/bad-number.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import type { Unit } from '../answer/quantity.ts';

/** One part as the maker lists it; sizes are the finished ones, in mm, the length along the grain. */
export interface PartSizes {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly quantity: number;
}

export type PartSize = Exclude<keyof PartSizes, 'name'>;

/** Beyond these a number is a slip of the thumb or of units: 12.2 m is the longest board, 3 m wider than any panel. */
export const partLimits = {
  length: { least: 10, most: 12_200 },
  width: { least: 3, most: 3000 },
  thickness: { least: 1, most: 160 },
  quantity: { least: 1, most: 500, whole: true },
} as const satisfies Record<PartSize, Limits>;

const says: Record<PartSize, readonly [name: string, unit: Unit]> = {
  length: ['The length', 'mm'],
  width: ['The width', 'mm'],
  thickness: ['The thickness', 'mm'],
  quantity: ['The number of pieces', 'count'],
};

/**
 * What is wrong with one size of a part, if anything.
 *
 * @param size which one; it is the field of the problem
 * @param value in mm, or pieces
 * @returns a problem, or undefined when the size can be
 * @valid parts of furniture: `partLimits`
 * @example badPartSize('length', 27_432) // => { field: 'length' }
 * @source the limits are common practice
 */
export function badPartSize(size: PartSize, value: number): Problem | undefined {
  const [name, unit] = says[size];
  return badNumber(size, name, value, unit, partLimits[size]);
}

/**
 * The name of a part or a piece as it is kept.
 *
 * @param typed as typed
 * @returns the name, without the room around it
 * @valid any text
 * @errors `name` when there is none
 * @example partName(' top ') // => 'top'
 * @source common practice
 */
export function partName(typed: string): Outcome<string> {
  return typed.trim() || problem('name', 'Give it a name.');
}
