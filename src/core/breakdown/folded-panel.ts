import { badNumber, firstBad, type NumberCheck } from '../answer/bad-number.ts';
import { firstWithin } from '../answer/first-within.ts';
import { oneStep } from '../answer/one-step.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { type Outcome, type Problem, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';

/** A length of a folded panel, in the order in which the grain runs on. */
export interface FoldSection {
  readonly name: string;
  /** Finished length on the outside, from long point to long point, mm. */
  readonly length: number;
}

/** How two neighbours are parted. */
export interface FoldCorner {
  /** Angle between the outsides of the two sections: 90 for a square corner, 180 for sections that stay in line. */
  readonly degrees: number;
  /** Extra length to trim at this cut, mm. */
  readonly trim: number;
}

/** A panel that is cut across later and folds round corners, one corner between each two sections. */
export interface PanelFold {
  readonly sections: readonly FoldSection[];
  readonly corners: readonly FoldCorner[];
}

export interface FoldedPanel {
  /** Of the one long panel to be planned and glued up as a whole, mm. */
  readonly length: number;
  /** Where each section begins and ends on the outside, from one end of the panel, mm. */
  readonly layout: readonly { readonly name: string; readonly from: number; readonly to: number }[];
  readonly cuts: readonly {
    readonly at: number;
    readonly takes: Worked;
    readonly bevel: number;
    readonly say: Phrase;
  }[];
}

/**
 * Why a corner can't be mitred with a tilted blade: 180 degrees is a straight cut, 60 a bevel of 60.
 *
 * @param degrees between the outsides
 * @returns the problem, or undefined when it can be mitred
 * @valid saws whose blade tilts to 60 degrees with a jig
 * @example badCorner(45) // => { field: 'degrees' }
 * @source common practice
 */
export const badCorner = (degrees: number): Problem | undefined =>
  badNumber('degrees', 'The corner', degrees, 'degrees', { least: 60, most: 180 });

/**
 * Why so much isn't trimmed beside the kerf: more than a hand's breadth is a slip of the thumb.
 *
 * @param trim mm
 * @returns the problem, or undefined when it can be trimmed
 * @valid panels of furniture
 * @example badTrim(101) // => { field: 'trim' }
 * @source common practice
 */
export const badTrim = (trim: number): Problem | undefined =>
  badNumber('trim', 'The trim', trim, 'mm', { least: 0, most: 100 });

/**
 * A panel that folds round corners, planned as one: its sections in order along the grain and what each cut takes.
 *
 * On the outside the two long points of a mitre lie one kerf apart, measured along the face: a saw tilted by the
 * bevel takes kerf / cos(bevel) of it. The wedge inside is waste of the same length of panel and takes no more of the
 * outside, so the figure meets at the corner but for that kerf.
 *
 * @param fold two or more sections in order along the grain, mm, and the corners between them
 * @param kerf of the saw, mm
 * @returns the panel's length, each section's place and each cut's place from one end, mm; bevels in degrees off square
 * @valid corners from 60 to 180 degrees, that is bevels up to 60
 * @errors a size or an angle that makes no sense, at its field
 * @example foldedPanel(
 *   {
 *     sections: [450, 1000, 450].map((length, at) => ({ name: `${at}`, length })),
 *     corners: Array(2).fill({ degrees: 90, trim: 0 }),
 *   },
 *   3,
 * ) // => { length: 1908.49, layout: [{}, { from: 454.24, to: 1454.24 }, {}] }
 * @source geometry
 */
export function foldedPanel({ sections, corners }: PanelFold, kerf: number): Outcome<FoldedPanel> {
  if (sections.length < 2 || corners.length !== sections.length - 1)
    return problem('sections', 'A folded panel has two parts or more, and a corner between each two.');
  const wrong =
    firstBad([
      ['kerf', 'The kerf', kerf, 'mm', { least: 0 }],
      ...sections.map(
        ({ name, length }, at): NumberCheck => [
          `sections.${at}.length`,
          `The length of ${name}`,
          length,
          'mm',
          { above: 0 },
        ],
      ),
    ]) ?? firstWithin(corners, 'corners', ({ degrees, trim }) => badCorner(degrees) ?? badTrim(trim));
  if (wrong) return wrong;
  let end = 0;
  const cuts: FoldedPanel['cuts'][number][] = [];
  const layout = sections.map(({ name, length }, index) => {
    const from = end;
    const to = from + length;
    const corner = corners[index];
    if (corner) {
      const cut = cutAt(to, corner, kerf);
      cuts.push(cut);
      end = to + cut.takes.value;
    }
    return { name, from, to };
  });
  return { length: layout.at(-1)?.to ?? 0, layout, cuts };
}

function cutAt(at: number, { degrees, trim }: FoldCorner, kerf: number): FoldedPanel['cuts'][number] {
  const bevel = (180 - degrees) / 2;
  const how = bevel === 0 ? 'square' : `with the blade tilted ${bevel}°, long point outside`;
  return {
    at,
    bevel,
    takes: oneStep(
      'taken of the outside',
      phrase`kerf ${mm(kerf)} ÷ cos ${bevel}° + trim ${mm(trim)}`,
      mm(kerf / Math.cos((bevel * Math.PI) / 180) + trim),
      ['geometry'],
    ),
    say: phrase`Cut at ${mm(at)} ${how}.`,
  };
}
