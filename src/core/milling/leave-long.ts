import type { CutBlank, CutStrip } from '../breakdown/problem-types.ts';
import { slack } from '../breakdown/sizes.ts';
import type { MillingBoard, MillingInput } from './milling-input.ts';
import { reachedIn } from './reached-in.ts';

/** A blank as it is really crosscut: one of the plan's, several in a row, or one with waste left on. */
export interface LongBlank {
  readonly start: number;
  readonly length: number;
  /** The plan's blanks in it, with the same strips each: several when blanks in a row stay in one length. */
  readonly row: readonly CutBlank[];
  readonly leftLong: boolean;
}

/** The least length in mm that every machine owned for flattening and thicknessing takes. */
const safeLength = ({ shop, limits }: MillingInput): number =>
  Math.max(
    shop.jointerWidth === null ? 0 : limits.jointer.leastLength.mm,
    shop.planerWidth === null ? 0 : limits.planer.leastLength.mm,
  );

const sameStrips = (one: readonly CutStrip[], other: readonly CutStrip[]): boolean =>
  one.length === other.length &&
  one.every(
    (strip, index) =>
      strip.part === other[index]?.part &&
      strip.spoilt === other[index].spoilt &&
      Math.abs(strip.width - other[index].width) < 0.01,
  );

/**
 * The blanks of one board with the short ones left long: neighbours with the same strips stay in one length and are
 * crosscut last; a short one alone keeps as much of the free board beside it as the machines need. Where bow or twist
 * would then take the thickness, it stays short and goes a slower way.
 *
 * @param board mm
 * @param planned its blanks in the plan, any order
 * @param input for parts, allowances and limits
 * @returns blanks in order along the board, each with those of the plan that it holds
 * @valid blanks that don't overlap
 * @example leaveLong(cleats.boards[0], cleats.blanks, cleats) // => [{ start: 0, length: 516.4, leftLong: true }]
 * @source common practice
 */
export function leaveLong(board: MillingBoard, planned: readonly CutBlank[], input: MillingInput): LongBlank[] {
  const least = safeLength(input);
  const kerf = input.shop.crosscutKerf;
  const parts = new Map(input.parts.map((part) => [part.id, part]));
  const order = [...planned].sort((one, other) => one.start - other.start);

  const staysThick = (strips: readonly CutStrip[], length: number): boolean =>
    strips.every(({ part, width }) => reachedIn(board, width, length, input) >= (parts.get(part)?.thickness ?? 0));

  const longBlanks: LongBlank[] = [];
  for (let index = 0; index < order.length; index++) {
    const first = order[index] as CutBlank;
    const row = [first];
    let end = first.start + first.length;
    for (let next = order[index + 1]; end - first.start < least && next; next = order[index + row.length]) {
      const forPanel = next.strips.some((strip) => parts.get(strip.part)?.panel);
      const reach = next.start + next.length;
      if (forPanel || !sameStrips(first.strips, next.strips) || !staysThick(first.strips, reach - first.start)) break;
      row.push(next);
      end = reach;
    }
    index += row.length - 1;

    const previous = longBlanks[longBlanks.length - 1];
    const free = {
      from: previous ? previous.start + previous.length + kerf : 0,
      to: (order[index + 1]?.start ?? board.length + kerf) - kerf,
    };
    let start = first.start;
    if (end - start < least) {
      const longEnd = Math.max(end, Math.min(free.to, start + least));
      const longStart = Math.min(start, Math.max(free.from, longEnd - least));
      if (longEnd - longStart >= least - slack && staysThick(first.strips, longEnd - longStart)) {
        end = longEnd;
        start = longStart;
      }
    }
    longBlanks.push({
      start,
      length: end - start,
      row,
      leftLong: row.length > 1 || end - start > first.length + 0.01,
    });
  }
  return longBlanks;
}
