import type { MillingBoard, MillingPart } from './milling-input.ts';
import type { Size } from './milling-step.ts';

/** A strip that becomes a solid part or goes into a panel; left long it serves several units. Lengths in mm. */
export interface StripWork {
  readonly id: string;
  readonly label: string;
  readonly part: MillingPart;
  readonly units: readonly number[];
  /** Rough width in the plan. */
  readonly width: number;
  /** Width once both edges are jointed. */
  readonly finished: number;
}

/** A length crosscut from a board, with its strips in order from the board's left edge. */
export interface BlankWork {
  readonly id: string;
  readonly label: string;
  readonly board: MillingBoard;
  readonly start: number;
  readonly length: number;
  readonly strips: readonly StripWork[];
  /** Longer than its parts need, because the short pieces would be below a machine's limit. */
  readonly leftLong: boolean;
}

/** What lies on the bed while faces are flattened: a whole blank, or one strip of it. */
export interface Workpiece {
  readonly id: string;
  readonly label: string;
  readonly blank: BlankWork;
  readonly strips: readonly StripWork[];
  /** As it is now. */
  readonly size: Size;
  /** Thickness that its parts need. */
  readonly need: number;
  /** Thickness that it can reach, flat on both faces. */
  readonly reachable: number;
}

/** What stands on a board's end: its chalk mark, or its id. */
export const mark = (board: MillingBoard): string => board.mark ?? board.id;
/** What the maker calls a part: its name, or its id. */
const partName = (part: MillingPart): string => part.name ?? part.id;

/** The unit that a strip of a panel goes into. */
export const unitKey = ({ part, units }: Pick<StripWork, 'part' | 'units'>): string => `${part.id}#${units[0]}`;

/** What a unit of a part is called: `lid`, `leg 3`, `cleat 1-4`. */
export function unitName(part: MillingPart, units: readonly number[]): string {
  if (part.quantity === 1) return partName(part);
  const [first = 1] = units;
  const last = units[units.length - 1] ?? first;
  const inRow = units.every((unit, index) => unit === first + index);
  if (units.length === 1) return `${partName(part)} ${first}`;
  return `${partName(part)} ${inRow ? `${first}-${last}` : units.join(', ')}`;
}
