import { isProblem, type Outcome, problem } from '../core/answer/problem.ts';
import type { Measured } from '../core/square/measured.ts';
import { lineNames, readingNames } from '../core/square/readings.ts';
import { squareness } from '../core/square/squareness.ts';
import { usualPrecision } from '../tables/reading-precisions.ts';
import type { Figure } from './ask.ts';

type Numbers = Readonly<Record<string, number>>;

const byStick = ['length', 'width', 'difference'];
const byDiagonals = ['length', 'width', 'diagonalAC', 'diagonalBD'];
const numberFields: readonly string[] = [...readingNames, 'length', 'width', 'precision'];
/** Where one length and one width are given, they are those of the front edge and of the left end. */
const asked: Readonly<Record<string, string>> = { front: 'length', left: 'width', right: 'width' };

const round = (value: number | null) => (value === null ? null : Math.round(value * 10_000) / 10_000 + 0);

function numbersOf(given: Readonly<Record<string, unknown>>): Outcome<Numbers> {
  for (const [name, value] of Object.entries(given)) {
    if (name === 'farEnd') continue;
    if (!numberFields.includes(name)) return problem(name.slice(0, 40), 'There is no such field here.');
    if (typeof value !== 'number' || !Number.isFinite(value)) return problem(name, 'This must be a number.');
  }
  return given as Numbers;
}

function measuredOf(numbers: Numbers, farEnd: unknown): Outcome<Measured> {
  if (farEnd !== undefined && farEnd !== 'parallel' && farEnd !== 'square')
    return problem('farEnd', 'The far end is "parallel" or "square".');
  const has = (name: string) => numbers[name] !== undefined;
  if (!byStick.some(has)) {
    if (farEnd !== undefined) return problem('farEnd', 'This goes with a length and a width.');
    return { readings: numbers };
  }
  const needs = has('difference') || !has('diagonalAC') ? byStick : byDiagonals;
  const missing = needs.find((name) => !has(name));
  if (missing) return problem(missing, `The ${missing} is missing.`);
  const extra = lineNames.find((name) => has(name) && !needs.includes(name));
  if (extra) return problem(extra, 'This does not go with a length and a width.');
  const { length: front = 0, width: left = 0, ...diagonals } = numbers;
  return { readings: { front, left, ...diagonals }, farEnd: farEnd ?? 'parallel' };
}

/** `square`: whether a piece is square, which way it is out and how far its back corners must slide. */
export const figure: Figure = (input) => {
  const { farEnd, ...rest } = input as Record<string, unknown>;
  const numbers = numbersOf(rest);
  if (isProblem(numbers)) return numbers;
  const { precision = usualPrecision.precision, ...lengths } = numbers;
  const measured = measuredOf(lengths, farEnd);
  if (isProblem(measured)) return measured;
  const found = squareness(measured, precision);
  if (isProblem(found)) return measured.farEnd ? { ...found, field: asked[found.field] ?? found.field } : found;
  const { corners, shape, slide, closing, suspect, detectable } = found.value;
  return {
    corners: { A: round(corners.A), B: round(corners.B), C: round(corners.C), D: round(corners.D) },
    shape,
    slide: { C: round(slide.C), D: round(slide.D) },
    closing: round(closing.closing),
    consistent: closing.consistent,
    suspect,
    detectable: round(detectable),
    spare: closing.spare,
    precision,
  };
};
