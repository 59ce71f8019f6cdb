import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import { rippedWidth } from '../breakdown/ripped-width.ts';
import type { MillingInput } from './milling-input.ts';
import { straightWidth } from './straight-width.ts';
import type { Ways } from './ways.ts';
import type { BlankWork, Workpiece } from './workpiece.ts';

/** Why a piece is not milled as planned, and what to do instead. */
export interface Setback {
  readonly id: string;
  readonly label: string;
  readonly kind: 'too thin' | 'no safe way' | 'crooked' | 'panel too narrow';
  readonly say: Phrase;
}

/** Why a workpiece can't be brought to its thickness in this shop, or null when it can. */
export function setbackOf(piece: Workpiece, ways: Ways, input: MillingInput): Setback | null {
  const { id, label, size, need, reachable } = piece;
  if (reachable < need) {
    const say = phrase`Reaches ${mm(reachable)} flat on both faces, needs ${mm(need)}.`;
    return { id, label, kind: 'too thin', say };
  }
  // It gets thinner and narrower on the way: both ends of the way must be safe.
  const planed = { ...size, width: size.width - input.shop.edgeAllowance / 2, thickness: need };
  const edged = ways.edge(size) && ways.edge(planed);
  const stuck = !ways.face(size) || !edged || !ways.thickness(planed, need);
  if (!stuck) return null;
  return {
    id,
    label,
    kind: 'no safe way',
    say: phrase`No machine here takes ${mm(size.length)} x ${mm(size.width)} x ${mm(size.thickness)} safely: leave it on a longer blank, or plane by hand.`,
  };
}

/** A blank whose crooked edge leaves less straight width than its strips take, or null. */
export function crookSetback({ id, label, board, length, strips }: BlankWork, input: MillingInput): Setback | null {
  const straight = straightWidth(board.width, board.length, board.crook ?? 0, length);
  const taken = rippedWidth(strips, input.shop.ripKerf);
  if (taken <= straight + 0.01) return null;
  return {
    id,
    label,
    kind: 'crooked',
    say: phrase`${mm(straight)} are straight, the strips take ${mm(taken)}. Crosscut shorter or rip narrower.`,
  };
}
