import { badNumber, firstBad, type NumberCheck } from '../answer/bad-number.ts';
import { type Phrase, phrase } from '../answer/phrase.ts';
import { isProblem, type Outcome, problem } from '../answer/problem.ts';
import { mm } from '../answer/quantity.ts';
import type { Worked } from '../answer/worked.ts';
import type { Part } from './problem-types.ts';

/** A length of a folded panel, in the order in which the grain runs on. */
export interface FoldedPart {
  readonly id: string;
  /** Finished length on the outside, from long point to long point, mm. */
  readonly length: number;
}

/** How two neighbours are parted. */
export interface Fold {
  /** Angle between the outsides of the two parts, degrees: 90 for a square corner, 180 for parts that stay in line. */
  readonly corner: number;
  /** Extra length to trim at this cut, mm. */
  readonly trim: number;
}

export interface FoldedPanel {
  /** One long panel to be planned and glued up as a whole. */
  readonly part: Part;
  /** Where each part begins and ends on the outside, from one end of the panel, mm. */
  readonly layout: readonly { readonly id: string; readonly from: number; readonly to: number }[];
  readonly cuts: readonly {
    readonly at: number;
    readonly takes: Worked;
    readonly bevel: number;
    readonly say: Phrase;
  }[];
}

/**
 * A panel that folds round corners, planned as one: its parts in order along the grain and what each cut takes.
 *
 * On the outside the two long points of a mitre lie one kerf apart, measured along the face: a saw tilted by the
 * bevel takes kerf / cos(bevel) of it. The wedge inside is waste of the same length of panel and takes no more of the
 * outside, so the figure meets at the corner but for that kerf.
 *
 * @param whole the panel's id, species, quantity, width and thickness, mm; its length is found
 * @param parts two or more, in order along the grain, mm
 * @param folds one between each two neighbours
 * @param kerf of the saw, mm
 * @returns the combined part, each part's place and each cut's place from one end, mm; bevels in degrees off square
 * @valid corners from 60 to 180 degrees, that is bevels up to 60
 * @errors a size or an angle that makes no sense, at its field
 * @example foldedPanel(
 *   { id: 'wrap', species: 'A', quantity: 1, width: 300, thickness: 20 },
 *   [450, 1000, 450].map((length, at) => ({ id: `${at}`, length })),
 *   Array(2).fill({ corner: 90, trim: 0 }),
 *   3,
 * ) // => { part: { length: 1908.49 }, layout: [{}, { from: 454.24, to: 1454.24 }, {}] }
 * @source geometry
 */
export function foldedPanel(
  whole: Omit<Part, 'length' | 'panel'>,
  parts: readonly FoldedPart[],
  folds: readonly Fold[],
  kerf: number,
): Outcome<FoldedPanel> {
  if (parts.length < 2) return problem('parts', 'A folded panel has two parts or more.');
  if (folds.length !== parts.length - 1)
    return problem('folds', `${parts.length} parts have ${parts.length - 1} cuts between them, not ${folds.length}.`);
  const wrong = firstBad([
    ['kerf', 'The kerf', kerf, 'mm', { least: 0 }],
    ...parts.map(
      ({ id, length }, at): NumberCheck => [`parts.${at}.length`, `The length of ${id}`, length, 'mm', { above: 0 }],
    ),
  ]);
  if (wrong) return wrong;
  const layout: { id: string; from: number; to: number }[] = [];
  const cuts: FoldedPanel['cuts'][number][] = [];
  let at = 0;
  for (const [index, { id, length }] of parts.entries()) {
    layout.push({ id, from: at, to: at + length });
    at += length;
    const fold = folds[index];
    if (!fold) break;
    const cut = foldCut(fold, at, kerf);
    if (isProblem(cut)) return { ...cut, field: `folds.${index}.${cut.field}` };
    cuts.push(cut);
    at += cut.takes.value;
  }
  return { part: { ...whole, length: at, panel: true }, layout, cuts };
}

function foldCut({ corner, trim }: Fold, at: number, kerf: number): Outcome<FoldedPanel['cuts'][number]> {
  const wrong =
    badNumber('corner', 'The corner', corner, 'degrees', { least: 60, most: 180 }) ??
    badNumber('trim', 'The trim', trim, 'mm', { least: 0 });
  if (wrong) return wrong;
  const bevel = (180 - corner) / 2;
  const value = kerf / Math.cos((bevel * Math.PI) / 180) + trim;
  const by = phrase(`kerf {kerf} ÷ cos ${bevel}° + trim {trim}`, { kerf: mm(kerf), trim: mm(trim) });
  const working = {
    steps: [{ finds: 'taken of the outside', by, gives: mm(value) }],
    sources: ['geometry'] as const,
  };
  const how = bevel === 0 ? 'square' : `with the blade tilted ${bevel}°, long point outside`;
  return { at, takes: { value, working }, bevel, say: phrase(`Cut at {at} ${how}.`, { at: mm(at) }) };
}
