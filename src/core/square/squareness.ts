import type { Phrase } from '../answer/phrase.ts';
import type { Outcome } from '../answer/problem.ts';
import type { Worked } from '../answer/worked.ts';
import { checkMeasured } from './check-readings.ts';
import { type ClosingError, closingError } from './closing-error.ts';
import { detectableSlide } from './detectable.ts';
import { type ExaggeratedOutline, exaggeratedOutline } from './exaggerated-outline.ts';
import { fitQuadrilateral } from './fit-quadrilateral.ts';
import { familyOf, type Measured } from './measured.ts';
import { cornerAngles, lengthsOf, type Quadrilateral } from './quadrilateral.ts';
import { type CornerName, cornerTriangles, measuredNames, type ReadingName } from './readings.ts';
import { type Shape, shapeOf } from './shape-of.ts';
import { slidesOf } from './slide.ts';
import { saySquareness } from './squareness-answer.ts';
import { squarenessWorking } from './squareness-working.ts';
import { suspectReading } from './suspect-reading.ts';

/** All that is known of a piece from what was measured. */
export interface Squareness {
  readonly shape: Shape;
  /** Corner angles, degrees; null for a corner that the readings leave free. */
  readonly corners: Readonly<Record<CornerName, number | null>>;
  /** How far C (positive away from D) and D (positive away from C) must slide, mm; null where the readings can't tell. */
  readonly slide: { readonly C: number | null; readonly D: number | null };
  readonly closing: ClosingError;
  /** The reading to take again, or null. */
  readonly suspect: ReadingName | null;
  /** The least slide that the readings can show, mm; null when they can show none. */
  readonly detectable: number | null;
  /** The fitted corners, mm; where readings are missing, as near to a rectangle as they let it. */
  readonly fitted: Quadrilateral;
  readonly outline: ExaggeratedOutline;
  /** What to do, in one or two sentences. */
  readonly say: Phrase;
}

/**
 * Whether a piece is square, which way it is out and how far to move what, from what was measured.
 *
 * @param measured mm
 * @param precision mm: no reading is further off than this (below 0.01 taken as 0.01)
 * @returns shape, corner angles in degrees, slides in mm, the readings' own contradiction, what they can show, and the
 *   answer in words, with the working
 * @valid pieces of 50 mm to 6 m that were meant as rectangles
 * @errors as `checkMeasured`
 * @example squareness({ readings: { front: 1800, left: 800, difference: 2 }, farEnd: 'parallel' }, 0.5).value
 *   // => { shape: 'racked', slide: { C: -1.09, D: 1.09 } }
 * @source plane geometry; least squares
 */
export function squareness(measured: Measured, precision: number): Outcome<Worked<Squareness>> {
  const bad = checkMeasured(measured, precision);
  if (bad) return bad;
  const { readings, farEnd } = measured;
  const fit = fitQuadrilateral(familyOf(measured), readings);
  const fitted = fit.shape;
  const names = measuredNames(readings);
  const fixed = (corner: CornerName) =>
    farEnd !== undefined || names.length >= 5 || cornerTriangles[corner].every((name) => names.includes(name));
  const ifFixed = (corner: CornerName, value: number) => (fixed(corner) ? value : null);
  const angles = cornerAngles(fitted);
  const slides = slidesOf(fitted);
  const closing = closingError(fit, precision);
  const detectable = detectableSlide(measured, precision);
  const found = {
    shape: shapeOf(measured, precision, closing),
    corners: {
      A: ifFixed('A', angles.A),
      B: ifFixed('B', angles.B),
      C: ifFixed('C', angles.C),
      D: ifFixed('D', angles.D),
    },
    slide: { C: ifFixed('B', slides.C), D: ifFixed('A', slides.D) },
    closing,
    suspect: closing.consistent ? null : suspectReading(readings),
    detectable: Number.isFinite(detectable) && (fixed('A') || fixed('B')) ? detectable : null,
    fitted,
    outline: exaggeratedOutline(fitted),
  };
  return {
    value: { ...found, say: saySquareness(found, measured) },
    working: squarenessWorking(found, lengthsOf(fitted), measured, precision),
  };
}
