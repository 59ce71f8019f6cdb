import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { inLoggedOrder } from '../../../src/screens/stock/board-order.ts';
import { correctedReadings, latestReading } from '../../../src/screens/stock/corrected-readings.ts';
import { costInDelivery } from '../../../src/screens/stock/cost-in-delivery.ts';
import { markedRectangle } from '../../../src/screens/stock/marked-rectangle.ts';
import { moistureTargets, targetById } from '../../../src/screens/stock/moisture-targets.ts';
import { invoicedVolume, recordedVolume } from '../../../src/screens/stock/priced-unit.ts';
import { filterRack, sortRack, wholeRack } from '../../../src/screens/stock/rack-filter.ts';
import { today } from '../../../src/screens/stock/today.ts';
import type { Board } from '../../../src/store/records/board.ts';
import { clearStretchesOf, roughShape } from '../../../src/store/records/board-shape.ts';
import type { Delivery } from '../../../src/store/records/delivery.ts';
import { outside } from '../../setup/outside.ts';

const board = (chalk: string, part: Partial<Board> = {}): Board => ({
  id: chalk,
  created: 1,
  updated: 1,
  revision: 1,
  chalk,
  species: 'cherry-black',
  thickness: { quarters: 4 },
  width: 200,
  length: 2400,
  state: 'rack',
  ...part,
});

test('the filter keeps what was asked for, and each board that passes', () => {
  const boards = [
    board('C2', { width: 150, farWidth: 90, created: 1, note: 'by the window' }),
    board('C10', { width: 203.2, created: 2, readings: [{ at: 1, percent: 8 }] }),
    board('M1', { species: 'maple-red', thickness: { mm: 50 }, created: 3, state: 'setAside' }),
    board('C1', { length: 900, created: 4, state: 'used' }),
  ];
  const marks = (part: object) => {
    const filter = { ...wholeRack, ...part };
    return sortRack(filterRack(boards, filter), filter.sort).map(({ chalk }) => chalk);
  };
  expect(marks({})).toEqual(['M1', 'C10', 'C2']);
  expect(marks({ state: 'all', sort: 'mark' })).toEqual(['C1', 'C2', 'C10', 'M1']);
  expect(marks({ state: 'used' })).toEqual(['C1']);
  expect(marks({ search: 'WINDOW cherry' })).toEqual(['C2']);
  expect(marks({ search: 'soft maple' })).toEqual(['M1']);
  expect(marks({ species: 'maple-red' })).toEqual(['M1']);
  // The narrow end of a tapered board is what counts; a board of the very size asked for passes.
  expect(marks({ width: 100 })).toEqual(['M1', 'C10']);
  expect(marks({ width: 203.2 })).toEqual(['C10']);
  expect(marks({ thickness: 40 })).toEqual(['M1']);
  // A board without a reading isn't known to be dry.
  expect(marks({ driestAt: 9 })).toEqual(['C10']);
  expect(marks({ sort: 'driest' })[0]).toBe('C10');
  expect(marks({ sort: 'widest' })[0]).toBe('C10');
  expect(marks({ sort: 'thickest' })[0]).toBe('M1');
  expect(marks({ state: 'all', sort: 'longest' }).at(-1)).toBe('C1');
});

test('boards logged at one moment stand by their marks', () => {
  expect(inLoggedOrder([board('C10'), board('C9'), board('B1', { created: 0 })]).map(({ chalk }) => chalk)).toEqual([
    'B1',
    'C9',
    'C10',
  ]);
});

test('a stroke marks a rectangle inside the board, a tap a knot', () => {
  const wood = board('C1', { width: 200, farWidth: 240, length: 2400 });
  expect(markedRectangle(wood, { x: 400, y: 20 }, { x: 302, y: 121 })).toEqual({
    start: 300,
    length: 100,
    offset: 20,
    width: 100,
  });
  expect(markedRectangle(wood, { x: 1000, y: 100 }, { x: 1001, y: 101 })).toMatchObject({ length: 60, width: 40 });
  const anywhere = fc.record({
    x: fc.double({ min: -500, max: 3000, noNaN: true }),
    y: fc.double({ min: -99, max: 400, noNaN: true }),
  });
  fc.assert(
    fc.property(anywhere, anywhere, (from, to) => {
      const { start, length, offset, width } = markedRectangle(wood, from, to);
      expect(start >= 0 && offset >= 0 && length > 0 && width > 0).toBe(true);
      expect(start + length <= wood.length && offset + width <= 240).toBe(true);
      // What is marked can always be planned around.
      expect(
        isProblem(
          clearStretchesOf(
            { ...wood, defects: [{ start, length, offset, width, kind: 'knot' }] },
            { leastLength: 300, leastWidth: 50, favour: 'area' },
          ),
        ),
      ).toBe(false);
    }),
  );
});

test('a stored board as planning sees it: narrow end, thickness in mm, warp measured or assumed', () => {
  expect(roughShape(board('C1', { width: 200, farWidth: 180, warp: { cup: 3, twist: 2 } }))).toEqual({
    thickness: 25.4,
    width: 180,
    length: 2400,
    cup: 3,
    bow: expect.any(Number),
    twist: 2,
  });
  // A board that nobody has measured isn't taken for flat.
  expect(roughShape(board('C1')).cup).toBeGreaterThan(0);
  expect(roughShape(board('C1')).bow).toBeGreaterThan(0);
  const defects = [{ start: 1000, length: 100, offset: 0, width: 200, kind: 'split' }];
  expect(clearStretchesOf(board('C1', { defects }), { leastLength: 300, leastWidth: 50, favour: 'area' })).toEqual([
    { start: 0, length: 1000, offset: 0, width: 200 },
    { start: 1100, length: 1300, offset: 0, width: 200 },
  ]);
});

test('readings come in order, corrected where the wood’s temperature is known', () => {
  const readings = correctedReadings({
    readings: [
      { at: 2, percent: 10, celsius: 10 },
      { at: 1, percent: 12 },
      { at: 3, percent: 45, celsius: 10 },
    ],
  });
  expect(readings.map(({ at }) => at)).toEqual([1, 2, 3]);
  expect(readings[0]?.percent).toBe(12);
  // The rule is given to one decimal.
  outside({
    what: '10 % read on wood at 10 °C, meter calibrated at 21.1 °C: moisture, %',
    source: 'wood-handbook-memory',
    at: 'half a percent for each 5.6 degrees Celsius',
    expected: 11,
    got: readings[1]?.percent,
    tolerance: 0.05,
  });
  // Above what the rule holds for, the reading stands as it is.
  expect(readings[2]?.percent).toBe(45);
  expect(readings.map(({ working }) => working !== undefined)).toEqual([false, true, false]);
  expect(latestReading(board('C1'))).toBeUndefined();
});

test('targets: bands the right way round, an unknown one falls back to the first', () => {
  for (const { band } of moistureTargets) expect(band.least < band.most && band.least > 0 && band.most < 30).toBe(true);
  // Wood handbook, figure 13-1: 6 to 10 % for most areas indoors.
  expect(targetById('gone').band).toMatchObject({ least: 6, most: 10 });
});

test('a delivery’s price is shared out by what each board holds, whatever order its boards are read in', () => {
  // 12 in by 8 ft of 4/4 and 8/4: 8 and 16 board feet (NHLA); at 9 and 48 of freight: 88 and 176, by hand.
  const [thin, thick] = [1, 2].map((n) =>
    board(`D${n}`, { created: n, width: 304.8, length: 2438.4, thickness: { quarters: 4 * n } }),
  ) as [Board, Board];
  const delivery = { price: { per: 'boardFoot', amount: 9 }, freight: 48 } as Delivery;
  expect(costInDelivery('D1', [thick, thin], delivery)).toMatchObject({ cost: { value: 88 } });
  expect(costInDelivery('D2', [thin, thick], delivery, 4)).toMatchObject({
    cost: { value: 176 },
    perUsableBoardFoot: { value: 44 },
  });
  // At 1000 a cubic metre, 2.36 for each board foot, seven digits known; 2 of 48 a board foot.
  const byVolume = { ...delivery, price: { per: 'cubicMetre', amount: 1000 } } as Delivery;
  const found = costInDelivery('D1', [thin, thick], byVolume);
  if (isProblem(found)) throw new Error('no cost');
  outside({
    what: '8 board feet at 1000 a cubic metre and 16 of freight: cost',
    source: 'nist-sp811',
    at: 'appendix B',
    expected: 8 * 2.359737 + 16,
    got: found.cost.value,
    tolerance: 5e-5,
  });
  expect(isProblem(costInDelivery('D1', [{ ...thin, width: 0 }], delivery))).toBe(true);
});

test('an invoice in cubic metres comes back as typed; the day is the phone’s own', () => {
  const delivery = { price: { per: 'cubicMetre', amount: 1 } } as Delivery;
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1e7 }), (millionths) => {
      const typed = millionths / 1e6;
      expect(invoicedVolume({ ...delivery, invoiceBoardFeet: recordedVolume(delivery, typed) })).toBe(typed);
    }),
  );
  expect(today(new Date(2025, 2, 4, 23, 59).getTime())).toBe('2025-03-04');
});
