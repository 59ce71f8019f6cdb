import { badNumber, firstBad } from '../answer/bad-number.ts';
import { phrase } from '../answer/phrase.ts';
import { type Outcome, problem } from '../answer/problem.ts';
import { count, mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import { workingStep } from '../answer/working-step.ts';

export interface AlignmentInput {
  /** Of the seam, mm. */
  readonly length: number;
  /** Of a loose tenon, dowel or spline along the seam, mm. */
  readonly width: number;
  /** Length that a bevel or mitre will take off either end, mm. */
  readonly start?: number;
  readonly end?: number;
  /** Where the piece will be crosscut later: middle of the kerf from the start, mm. */
  readonly crosscuts?: readonly number[];
  /** How far such a cut, and the bevel that it leaves, reach to each side of that middle, mm; 0 unless told otherwise. */
  readonly reach?: number;
  /** Wood to leave beside each, to a cut, an end or the next one, mm; 15 unless told otherwise. */
  readonly clear?: number;
  /** Apart at most, centre to centre, mm; 200 unless told otherwise. */
  readonly spacing?: number;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * Where loose tenons, dowels or splines go along a seam or mitre: spread evenly, clear of later crosscuts, of bevels
 * and of each other.
 *
 * @param input length of the seam, width of one along it, bevels, later crosscuts and their reach, clearance and
 *   spacing, all mm
 * @returns their centres from the start, mm, rising
 * @valid a straight seam. Each length between two cuts gets at least two where they fit, so that every piece stays
 *   aligned
 * @errors a `Problem` on the input that is missing or negative, on `crosscuts` outside the seam, on `length` when none
 *   fits
 * @example alignmentPositions({ length: 600, width: 40, clear: 15, spacing: 200 }).value
 *   // => [35.0, 211.7, 388.3, 565.0]
 * @source spacing and clearance are common practice
 */
export function alignmentPositions(input: AlignmentInput): Outcome<Worked<readonly number[]>> {
  const { length, width, start = 0, end = 0, crosscuts = [], reach = 0, clear = 15, spacing = 200 } = input;
  const wrong =
    badNumber('length', 'The length', length, 'mm', { above: 0, most: 20_000 }) ??
    badNumber('width', 'The width', width, 'mm', { above: 0 }) ??
    badNumber('start', 'The bevel', start, 'mm', { least: 0 }) ??
    badNumber('end', 'The bevel', end, 'mm', { least: 0 }) ??
    badNumber('reach', 'The reach', reach, 'mm', { least: 0 }) ??
    badNumber('clear', 'The clearance', clear, 'mm', { least: 0 }) ??
    badNumber('spacing', 'The spacing', spacing, 'mm', { least: 20 }) ??
    firstBad(
      crosscuts.map((at, index) => [`crosscuts.${index}`, 'The crosscut', at, 'mm', { least: 0, most: length }]),
    );
  if (wrong) return wrong;
  const cuts = crosscuts.map((at) => ({ from: at - reach, to: at + reach }));
  const room = clear + width / 2;
  const positions = freeOf(length, [{ from: 0, to: start }, ...cuts, { from: length - end, to: length }]).flatMap(
    ({ from, to }) => spread(from + room, to - room, spacing, width + clear),
  );
  if (positions.length === 0) {
    return problem('length', phrase`None fits with ${mm(clear)} on both sides of ${mm(width)}. Take a narrower one.`);
  }
  return {
    value: positions,
    working: {
      steps: [
        workingStep(
          'how many',
          phrase`evenly, ${mm(clear)} clear of each cut, at most ${mm(spacing)} apart`,
          count(positions.length),
        ),
      ],
      sources: ['common-practice'],
    },
  };
}

/** What is left of the seam between the stretches that are taken. */
function freeOf(length: number, taken: readonly Stretch[]): Stretch[] {
  const free: Stretch[] = [];
  let from = 0;
  for (const stretch of taken.toSorted((a, b) => a.from - b.from)) {
    if (stretch.from > from) free.push({ from, to: Math.min(stretch.from, length) });
    from = Math.max(from, stretch.to);
  }
  return free;
}

/** Evenly from first to last, no further apart than `spacing`, no nearer than `apart`. */
function spread(first: number, last: number, spacing: number, apart: number): number[] {
  const room = last - first;
  if (room < 0) return [];
  const gaps = Math.min(Math.max(1, Math.ceil(room / spacing)), Math.floor(room / apart));
  if (gaps === 0) return [(first + last) / 2];
  return Array.from({ length: gaps + 1 }, (_, index) => first + (room * index) / gaps);
}
