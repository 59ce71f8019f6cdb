import { expect, test } from 'vitest';
import { howDry } from '../../../src/screens/bench/how-dry.ts';
import type { Answer } from '../../../src/screens/bench/what-now.ts';
import type { Board } from '../../../src/store/records/board.ts';
import { board, plan, run } from '../mill/records.ts';
import { hour, now, ofPiece } from './records.ts';

const day = 24 * hour;
/** Percent so many days ago. */
const read = (...readings: (readonly [days: number, percent: number])[]): Partial<Board> => ({
  readings: readings.map(([days, percent]) => ({ at: now - days * day, percent })),
});
const said = ({ what, of, id }: Answer) => [what.text, of, id];

test('boards on their way into the band wait until about the day the last of them is there', async () => {
  const rack = [
    board('a1', read([10, 20], [0, 12])),
    board('a2', read([10, 16], [0, 11])),
    board('a3', read([0, 15])),
    board('a4', { ...read([10, 20], [0, 12]), state: 'used' }),
    board('a5', read([8, 8], [0, 8])),
    ...Array.from({ length: 400 }, (_, n) => board(`b${n}`, read([8, 8], [0, 8]))),
  ];
  const { waits, missing } = await howDry(rack, [], {}, now);
  expect(waits.map(said)).toEqual([['Still drying', 'A1 and 1 more', 'a1']]);
  // Towards the middle of the band (6 to 10 %): 12, then 4 above 8 % in ten days; the edge, 2 above, after another
  // 10 ln(4 / 2) / ln(12 / 4) = 6.3 days (exponential approach, an assumption; a2: 4.1). Tolerance: rounding of doubles.
  expect(((waits[0]?.until ?? 0) - now) / day).toBeCloseTo((10 * Math.log(2)) / Math.log(3), 6);
  expect(waits[0]?.about).toBe(true);
  expect(missing).toEqual([]);
});

test('once that day is over a new reading is asked for', async () => {
  const rack = [board('a1', read([50, 20], [40, 12]))];
  const { waits, missing } = await howDry(rack, [], {}, now);
  expect(waits).toEqual([]);
  expect(missing.map(said)).toEqual([['Dry by now? Read it again', 'A1', 'a1']]);
});

test('boards of a plan that nobody has read, and only before the first cut', async () => {
  const rack = [board('a1'), board('a2', read([1, 7])), board('a3')];
  const of = async (given: Parameters<typeof ofPiece>[1]) =>
    (await howDry(rack, [ofPiece('chest', given)], {}, now)).missing.map(said);
  // The plan takes a1 and a2.
  expect(await of({ plan: plan('one') })).toEqual([['No moisture reading: chest', 'A1', 'a1']]);
  expect(await of({ plan: plan('one'), milling: run(plan('one')) })).toEqual([]);
  expect(await of({})).toEqual([]);
});
