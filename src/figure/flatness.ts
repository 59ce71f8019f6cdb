import { isProblem, problem } from '../core/answer/problem.ts';
import { flatThickness } from '../core/milling/flat-thickness.ts';
import { warpCost } from '../core/milling/reachable-thickness.ts';
import { straightWidth } from '../core/milling/straight-width.ts';
import type { Figure } from './ask.ts';

const needed = ['thickness', 'width', 'length'] as const;
const defaults = { cup: 0, bow: 0, twist: 0, crook: 0, faceAllowance: 0, rips: 1, blankLength: undefined };

const round = (value: number) => Math.round(value * 1000) / 1000;

/** `flatness`: thickness left once a blank ripped into equal strips is flat on both faces, and what took the rest. */
export const figure: Figure = (input) => {
  const given = input as Record<string, unknown>;
  for (const name of Object.keys(given)) {
    if (![...needed, ...Object.keys(defaults)].includes(name)) {
      return problem(name.slice(0, 40), 'There is no such field here.');
    }
  }
  for (const name of needed) if (given[name] === undefined) return problem(name, `The ${name} is missing.`);
  for (const [name, value] of Object.entries(given)) {
    if (typeof value !== 'number' || !Number.isFinite(value)) return problem(name, 'This must be a number.');
  }
  const read = { ...defaults, ...(given as Record<(typeof needed)[number], number>) };
  const blankLength = read.blankLength ?? read.length;

  const left = flatThickness(read, { blankLength, rips: read.rips, faceAllowance: read.faceAllowance });
  if (isProblem(left)) return left;
  const cost = warpCost(read, read.width / read.rips, blankLength);
  const width = straightWidth(read.width, read.length, read.crook, blankLength);
  return {
    reachable: round(left.value),
    lost: { cup: round(cost.cup), bow: round(cost.bow), twist: round(cost.twist) },
    straightWidth: round(width),
  };
};
