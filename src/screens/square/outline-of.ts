import { lengthText } from '../../core/length/format-length.ts';
import type { LengthUnits } from '../../core/length/length-units.ts';
import { shownLength } from '../../core/length/shown-length.ts';
import type { ExaggeratedOutline } from '../../core/square/exaggerated-outline.ts';
import { type LineName, lineNames, type Readings } from '../../core/square/readings.ts';
import { rectangle } from '../../core/square/shape-family.ts';
import type { Correction } from './correction-of.ts';
import type { Arrow } from './outline.tsx';
import { entryOfLine, type SquareForm } from './square-form.ts';

/** A rectangle to tap on before there is a shape: as long and wide as typed, else two by one. */
export function plainOutline(values: Readings): ExaggeratedOutline {
  const length = values.front ?? values.back ?? 2;
  const width = values.left ?? values.right ?? 1;
  const ratio = length / width;
  // One size alone, or one that has slipped, says nothing of the shape.
  const wide = ratio > 1 / 6 && ratio < 6 ? ratio : 2;
  const square = rectangle.corners([wide, 1]);
  return { corners: square, square, factor: 1 };
}

/** What is written along each line: the reading, or with a stick which diagonal is the longer one and by how much. */
export function lineValues(form: SquareForm, values: Readings, units: LengthUnits): Partial<Record<LineName, string>> {
  const written: Partial<Record<LineName, string>> = {};
  for (const line of lineNames) {
    const entry = entryOfLine(line, form);
    const value = entry && values[entry];
    if (value === undefined) continue;
    const text = lengthText(shownLength(value, units));
    if (entry !== 'difference') written[line] = text;
    else if (line === form.longer) written[line] = `+${text}`;
  }
  return written;
}

/** Where the drawing points: the corner that moves, or both ends of the diagonal that is squeezed. */
export function arrowsOf(correction: Correction | undefined): readonly Arrow[] {
  if (correction?.kind === 'cuts') return correction.cuts.map(({ value }) => value.move);
  if (correction?.kind !== 'squeeze') return [];
  const [one, other] = correction.clamps.value.squeeze === 'diagonalAC' ? (['A', 'C'] as const) : (['B', 'D'] as const);
  return [
    { corner: one, other, towards: true },
    { corner: other, other: one, towards: true },
  ];
}
