import { describe, expect, it } from 'vitest';
import { formatLength } from '../../../src/core/length/format-length.ts';
import { parseLength } from '../../../src/core/length/parse-length.ts';
import { splitLength } from '../../../src/core/length/split-length.ts';

const inches = (nearest: number) => ({ unit: 'in', nearest }) as const;
const millimetres = { unit: 'mm', nearest: 16 } as const;

describe('formatLength', () => {
  it.each([
    [146.05, 16, '5 3/4'],
    [127, 16, '5'],
    [19.05, 16, '3/4'],
    [0, 16, '0'],
    [-146.05, 16, '−5 3/4'],
    [-0.01, 16, '0'],
    [25.39, 16, '1'],
    [158.75, 2, '6 1/2'], // 6 1/4 is half way between 6 and 6 1/2
    [(3 * 25.4) / 4, 2, '1'], // half way too, though binary numbers make it a little less
    [0.396875, 64, '1/64'],
  ])('writes %d mm to the nearest 1/%d as %s', (mm, nearest, text) => {
    expect(formatLength(mm, inches(nearest))).toBe(text);
  });

  it.each([
    [146.05, '146.1'],
    [146, '146'],
    [146.04, '146'],
    [-3.2, '−3.2'],
    [-0.04, '0'],
  ])('writes %d mm as %s', (mm, text) => {
    expect(formatLength(mm, millimetres)).toBe(text);
  });

  it('brings every 1/64 in up to 40 ft back from text unchanged', () => {
    const lost = [];
    for (let parts = 0; parts <= 40 * 12 * 64; parts++) {
      const mm = (parts * 25.4) / 64;
      const text = formatLength(mm, inches(64));
      const read = parseLength(text, 'in') as number;
      // 1e-9 mm: the two ways to the same number may differ in the last binary digit of some metres.
      if (!(Math.abs(read - mm) < 1e-9) || formatLength(read, inches(64)) !== text) lost.push(text);
    }
    expect(lost).toEqual([]);
  });

  it('brings every 0.1 mm up to 12 m back from text unchanged', () => {
    const lost = [];
    for (let tenths = 0; tenths <= 120_000; tenths++) {
      const mm = tenths / 10;
      const text = formatLength(mm, millimetres);
      const read = parseLength(text, 'mm') as number;
      if (read !== mm || formatLength(read, millimetres) !== text) lost.push(text);
    }
    expect(lost).toEqual([]);
  });
});

describe('splitLength', () => {
  it('gives the parts of a stacked fraction in lowest terms', () => {
    expect(splitLength(146.05, inches(16))).toEqual({
      negative: false,
      whole: '5',
      numerator: 3,
      denominator: 4,
      unit: 'in',
    });
    expect(splitLength(-19.05, inches(16))).toMatchObject({ negative: true, whole: '', numerator: 3, denominator: 4 });
  });
  it('keeps decimals of millimetres in the text', () => {
    expect(splitLength(146.1, millimetres)).toMatchObject({ whole: '146.1', numerator: 0 });
  });
});
