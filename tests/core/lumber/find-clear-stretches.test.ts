import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import type { ClearStretch } from '../../../src/core/breakdown/problem-types.ts';
import type { Board } from '../../../src/core/lumber/board.ts';
import { type Defect, findClearStretches, type StretchWish } from '../../../src/core/lumber/find-clear-stretches.ts';

const board: Board = { thickness: { quarters: 4 }, width: 200, length: 2400 };
const edgeKnot: Defect = { from: 1000, to: 1100, left: 160, right: 200 };
const area: StretchWish = { leastLength: 300, leastWidth: 40, favour: 'area' };
const length: StretchWish = { ...area, favour: 'length' };

function stretches(on: Board, defects: readonly Defect[], wish: StretchWish): ClearStretch[] {
  const found = findClearStretches(on, defects, wish);
  if (isProblem(found)) throw new Error(found.message.text);
  return found;
}

describe('findClearStretches', () => {
  it('leaves a clear board whole, and a tapered one as wide as its narrow end', () => {
    expect(stretches(board, [], area)).toEqual([{ start: 0, length: 2400, offset: 0, width: 200 }]);
    expect(stretches({ ...board, farWidth: 150 }, [], length)).toEqual([
      { start: 0, length: 2400, offset: 0, width: 150 },
    ]);
  });

  it('crosscuts a knot at the edge out for area, and rips past it for length', () => {
    expect(stretches(board, [edgeKnot], area)).toEqual([
      { start: 0, length: 1000, offset: 0, width: 200 },
      { start: 1100, length: 1300, offset: 0, width: 200 },
    ]);
    expect(stretches(board, [edgeKnot], length)).toEqual([{ start: 0, length: 2400, offset: 0, width: 160 }]);
  });

  it('keeps the wider side of a split, and cuts off checked ends and wane', () => {
    const split: Defect = { from: 0, to: 2400, left: 70, right: 75 };
    expect(stretches(board, [split], area)).toEqual([{ start: 0, length: 2400, offset: 75, width: 125 }]);
    const checkedEnd: Defect = { from: -10, to: 80, left: -5, right: 300 };
    expect(stretches(board, [checkedEnd], area)).toEqual([{ start: 80, length: 2320, offset: 0, width: 200 }]);
  });

  it('finds a wider stretch at the wide end of a taper, up to the defect', () => {
    const knot: Defect = { from: 1200, to: 1250, left: 0, right: 240 };
    const [first, second] = stretches({ ...board, width: 240, farWidth: 180 }, [knot], area);
    expect(first).toMatchObject({ start: 0, length: 1200, width: 210 });
    expect(second).toMatchObject({ start: 1250, width: 180 });
  });

  it('never goes past an end by the last binary digit', () => {
    // In binary numbers 16.4 + (123.8 - 16.4) is more than 123.8.
    const ends = [
      { from: 0, to: 16.4, left: 0, right: 200 },
      { from: 123.8, to: 2400, left: 0, right: 200 },
    ];
    const [found] = stretches(board, ends, { ...area, leastLength: 100 });
    expect(found?.start).toBe(16.4);
    expect(16.4 + (found?.length ?? 0)).toBeLessThanOrEqual(123.8);
    expect(found?.length).toBeCloseTo(107.4, 9); // binary noise only
  });

  it('finds nothing where nothing of use remains', () => {
    expect(stretches(board, [{ from: 0, to: 2400, left: 0, right: 200 }], area)).toEqual([]);
    expect(stretches(board, [], { ...area, leastWidth: 201 })).toEqual([]);
    expect(stretches(board, [], { ...area, leastLength: 2401 })).toEqual([]);
  });

  const tenths = (most: number) => fc.integer({ min: -100, max: most * 10 }).map((value) => value / 10);
  const anyDefect = fc.tuple(tenths(2500), tenths(300), tenths(210), tenths(80)).map(([from, long, left, wide]) => ({
    from,
    to: from + Math.abs(long),
    left,
    right: left + Math.abs(wide),
  }));
  const anyTaper = fc.record({
    thickness: fc.constant({ quarters: 4 }),
    width: fc.integer({ min: 600, max: 3000 }).map((value) => value / 10),
    farWidth: fc.integer({ min: 600, max: 3000 }).map((value) => value / 10),
    length: fc.integer({ min: 5000, max: 40_000 }).map((value) => value / 10),
  });

  it('gives stretches that are clear, of use, on the board, and follow each other', () => {
    fc.assert(
      fc.property(
        anyTaper,
        fc.array(anyDefect, { maxLength: 8 }),
        fc.constantFrom(area, length),
        (any, defects, wish) => {
          let end = 0;
          for (const found of stretches(any, defects, wish)) {
            const { start, offset } = found;
            const to = start + found.length;
            const right = offset + found.width;
            expect(start >= end && to <= any.length && offset >= 0).toBe(true);
            end = to;
            const widthAt = (at: number) => any.width + ((any.farWidth - any.width) * at) / any.length;
            // 1e-9 mm: binary noise of the taper's width.
            expect(right).toBeLessThanOrEqual(Math.min(widthAt(start), widthAt(to)) + 1e-9);
            expect(found.length >= wish.leastLength - 1e-9 && found.width >= wish.leastWidth - 1e-9).toBe(true);
            const touched = defects.filter((d) => d.from < to && d.to > start && d.left < right && d.right > offset);
            expect(touched).toEqual([]);
          }
        },
      ),
    );
  });

  it('gives no less area than the best single rectangle between defects, tried one by one', () => {
    fc.assert(
      fc.property(fc.array(anyDefect, { maxLength: 5 }), (defects) => {
        const xs = [0, 2400, ...defects.flatMap((d) => [d.from, d.to])].filter((x) => x >= 0 && x <= 2400);
        const ys = [0, 200, ...defects.flatMap((d) => [d.left, d.right])].filter((y) => y >= 0 && y <= 200);
        let best = 0;
        for (const a of xs)
          for (const b of xs)
            for (const c of ys)
              for (const d of ys)
                if (b - a >= area.leastLength && d - c >= area.leastWidth)
                  if (!defects.some((one) => one.from < b && one.to > a && one.left < d && one.right > c))
                    best = Math.max(best, (b - a) * (d - c));
        const found = stretches(board, defects, area).reduce((sum, each) => sum + each.length * each.width, 0);
        expect(found).toBeGreaterThanOrEqual(best * (1 - 1e-8)); // ties within the noise of the choice
      }),
    );
  });

  it.each([
    ['length', { ...board, length: 0 }, [], area],
    ['defects.1', board, [edgeKnot, { ...edgeKnot, to: 900 }], area],
    ['defects.0', board, [{ ...edgeKnot, right: 0 }], area],
    ['defects.0', board, [{ ...edgeKnot, left: Number.NaN }], area],
    ['defects', board, Array.from({ length: 101 }, () => edgeKnot), area],
  ] as const)('names %s', (field, on, defects, wish) => {
    expect(findClearStretches(on, defects, wish)).toMatchObject({ kind: 'problem', field });
  });
});
