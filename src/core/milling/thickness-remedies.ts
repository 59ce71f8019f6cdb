import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import { type RoughBoard, reachableThickness } from './reachable-thickness.ts';

/** One thing to do before flattening, and the thickness that it gains. */
export interface Remedy {
  readonly kind: 'rip' | 'shorten' | 'hidden face' | 'thinner part' | 'thicker board';
  /** In mm; 0 where nothing is gained but the need changes. */
  readonly gain: number;
  /** Whether this alone makes it reach the thickness. */
  readonly enough: boolean;
  readonly say: Phrase;
}

/** A piece that is to be flattened, in mm. */
export interface ToFlatten {
  readonly board: RoughBoard;
  readonly width: number;
  readonly length: number;
  readonly need: number;
  readonly faceAllowance: number;
  /** The shortest that the piece may be crosscut. */
  readonly leastLength: number;
  /** The narrowest strip that it may be ripped into; absent when it must stay in one width. */
  readonly leastStrip?: number;
}

/**
 * What to do before flattening so that a piece keeps more thickness, and what when that isn't enough.
 *
 * @param piece the board, the piece's width, length and needed thickness, the least it may be cut down to; mm
 * @returns remedies in the order to try them, each with its gain in mm. Ripping names the fewest strips that are
 *   enough, or the most that are possible. Where the piece reaches its thickness, only those that gain 0.1 mm or more
 * @valid as `reachableThickness`
 * @example thicknessRemedies({
 *   board: { thickness: 28, width: 250, length: 2400, cup: 2.5, bow: 0 },
 *   width: 250,
 *   length: 1000,
 *   need: 25,
 *   faceAllowance: 1,
 *   leastLength: 1000,
 *   leastStrip: 50,
 * })[0] // => { kind: 'rip', gain: 1.875 }
 * @source plane geometry; common practice for what is tried first
 */
export function thicknessRemedies(piece: ToFlatten): Remedy[] {
  const { board, width, length, need, faceAllowance, leastLength, leastStrip } = piece;
  const left = (w: number, l: number) => reachableThickness(board, w, l, faceAllowance);
  const now = left(width, length);
  const remedies: Remedy[] = [];
  const offer = (kind: Remedy['kind'], gain: number, say: Phrase) => {
    if (gain >= 0.1) remedies.push({ kind, gain, enough: now + gain >= need, say });
  };

  const most = leastStrip === undefined ? 1 : Math.floor(width / leastStrip);
  let strips = Math.min(2, most);
  while (strips < most && left(width / strips, length) < need) strips++;
  if (strips > 1) {
    const gain = left(width / strips, length) - now;
    offer('rip', gain, phrase`Rip in ${strips} before flattening: ${mm(gain)} more.`);
  }
  if (leastLength < length) {
    const gain = left(width, leastLength) - now;
    offer('shorten', gain, phrase`Crosscut to ${mm(leastLength)} before flattening: ${mm(gain)} more.`);
  }
  if (now >= need) return remedies;

  offer('hidden face', faceAllowance, phrase`Leave the hidden face rough in low spots: ${mm(faceAllowance)} more.`);
  const missing = need - now;
  return [
    ...remedies,
    {
      kind: 'thinner part',
      gain: 0,
      enough: now > 0,
      say: phrase`Or make the part ${mm(now)} thick.`,
    },
    {
      kind: 'thicker board',
      gain: missing,
      enough: true,
      say: phrase`Or take a board of ${mm(board.thickness + missing)}, no more warped.`,
    },
  ];
}
