import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import { clearOf } from './clear-stretches.ts';
import type { Blank, BreakdownPlan, BreakdownProblem } from './problem-types.ts';

export interface Cut {
  readonly kind: 'crosscut' | 'rip';
  /** Place of the blank in the plan. */
  readonly blank: number;
  /**
   * Crosscut: where the blank ends, measured from the board's start end, the kerf beyond it.
   * Rip: the fence setting, which is the width of the strip that lies against the fence.
   */
  readonly at: number;
  /** How many rips one after another at this fence setting; 1 for a crosscut. */
  readonly times: number;
  readonly say: Phrase;
}

export interface BoardCuts {
  readonly board: string;
  readonly cuts: readonly Cut[];
  /** What is free after the last blank, mm. */
  readonly leftover: number;
}

/**
 * The cuts of one board in the order in which they are made.
 *
 * Every crosscut is measured from the same end, so that errors don't add up: first where a blank begins, unless it
 * begins where the last cut's kerf ended, then where it ends. Then each blank is ripped, wide strips first.
 *
 * The board is marked out whole before it is cut: once the first blank is off, its end is no longer there to measure
 * from.
 *
 * @param asked boards and shop, mm
 * @param plan blanks, mm
 * @param board its id
 * @returns cuts with positions and fence settings in mm, and the length left over
 * @valid plans without breaches
 * @example boardCuts(smallProblem, planOf(blank('B1', 0, 1030), blank('B1', 1033, 500)), 'B1')
 *   // => { cuts: [{ at: 1030 }, { at: 1533 }], leftover: 914 }
 * @source common practice
 */
export function boardCuts(asked: BreakdownProblem, plan: BreakdownPlan, board: string): BoardCuts {
  const { crosscutKerf } = asked.shop;
  const rough = asked.boards.find((candidate) => candidate.id === board);
  const length = rough?.length ?? 0;
  const placed = plan.blanks
    .map((blank, at) => ({ blank, at }))
    .filter(({ blank }) => blank.board === board)
    .sort((a, b) => a.blank.start - b.blank.start);
  const cuts: Cut[] = [];
  let free = 0;
  for (const { blank, at } of placed) {
    const end = blank.start + blank.length;
    // Half a kerf tells a blank that follows from one that lies further along.
    if (blank.start > free + crosscutKerf / 2)
      cuts.push(crosscut(at, blank.start - crosscutKerf, 'Crosscut at {at} to start clear.'));
    if (end < length) cuts.push(crosscut(at, end, 'Crosscut at {at} from the end.'));
    free = Math.min(length, end + crosscutKerf);
  }
  const clearWidth = (blank: Blank) => (rough && clearOf(rough, blank)?.width) ?? 0;
  cuts.push(...placed.flatMap(({ blank, at }) => rips(blank, at, clearWidth(blank), asked.shop.ripKerf)));
  return { board, cuts, leftover: length - free };
}

const crosscut = (blank: number, at: number, text: string): Cut => ({
  kind: 'crosscut',
  blank,
  at,
  times: 1,
  say: phrase(text, { at: mm(at) }),
});

/** Rips of a blank, equal ones together; the last strip needs none when nothing worth a rip is left beside it. */
function rips(blank: Blank, at: number, width: number, kerf: number): Cut[] {
  const byWidth = new Map<number, number>();
  for (const strip of [...blank.strips].sort((a, b) => b.width - a.width))
    byWidth.set(strip.width, (byWidth.get(strip.width) ?? 0) + 1);
  const used = blank.strips.reduce((sum, strip) => sum + strip.width, kerf * (blank.strips.length - 1));
  const settings = [...byWidth].map(([fence, times]) => ({ fence, times }));
  // A sliver thinner than half the kerf can't be ripped off: the blade would wander out of the wood.
  const last = settings.at(-1);
  const lastIsLeft = width - used < Math.max(kerf / 2, 1e-3);
  if (last && lastIsLeft) last.times--;
  return settings
    .filter(({ times }) => times > 0)
    .map(({ fence, times }, place, all) => {
      const strips = times === 1 ? 'one strip' : `${times} strips`;
      const rest = lastIsLeft && place === all.length - 1 ? '; what is left is the last strip' : '';
      return {
        kind: 'rip',
        blank: at,
        at: fence,
        times,
        say: phrase(`Rip ${strips} with the fence at {fence}${rest}.`, { fence: mm(fence) }),
      };
    });
}
