import { describe, expect, it } from 'vitest';
import { isProblem } from '../../src/core/answer/problem.ts';
import { figure } from '../../src/figure/square.ts';
import { outside } from '../setup/outside.ts';

interface Answer {
  corners: Record<'A' | 'B' | 'C' | 'D', number | null>;
  shape: string;
  slide: { C: number | null; D: number | null };
  closing: number;
  consistent: boolean;
  suspect: string | null;
  detectable: number | null;
}

const ask = (input: object): Answer => {
  // As it arrives: an undefined property is no property.
  const answer = figure(JSON.parse(JSON.stringify(input)));
  if (isProblem(answer)) throw new Error(`${answer.field}: ${answer.message.text}`);
  // As it is printed: nothing may be lost on the way.
  return JSON.parse(JSON.stringify(answer)) as Answer;
};

/** The six lengths of A (0, 0), B (front, 0), C and D, each rounded to the hundredth as a reader would type them. */
function lengths(front: number, c: [number, number], d: [number, number]) {
  const typed = (value: number) => Math.round(value * 100) / 100;
  return {
    front,
    right: typed(Math.hypot(c[0] - front, c[1])),
    back: typed(Math.hypot(c[0] - d[0], c[1] - d[1])),
    left: typed(Math.hypot(...d)),
    diagonalAC: typed(Math.hypot(...c)),
    diagonalBD: typed(Math.hypot(front - d[0], d[1])),
  };
}

const atan = (opposite: number, adjacent: number) => (Math.atan2(opposite, adjacent) * 180) / Math.PI;

describe('all six measured', () => {
  it('5, 12, 13 is square', () => {
    const found = ask({
      ...{ front: 1200, right: 500, back: 1200, left: 500 },
      ...{ diagonalAC: 1300, diagonalBD: 1300, precision: 0.5 },
    });
    const { corners } = found as { corners: unknown };
    outside({
      what: 'figure: sides of 1200 and 500, diagonals of 1300: corners, degrees',
      source: 'geometry',
      at: 'Euclid I.48, 5 12 13',
      expected: { A: 90, B: 90, C: 90, D: 90 },
      got: corners,
    });
    expect(found).toMatchObject({
      corners: { A: 90, B: 90, C: 90, D: 90 },
      shape: 'square',
      slide: { C: 0, D: 0 },
      closing: 0,
      consistent: true,
      suspect: null,
      // 0.5 x 1300 / 1200.
      detectable: 0.5417,
    });
  });

  it('a lean of 4 over 800: C must come in, D must go out', () => {
    const found = ask({ ...lengths(1800, [1804, 800], [4, 800]), precision: 0.5 });
    expect(found.shape).toBe('racked');
    // C stands 4 outside B's square line: 4 towards D, negative. D stands 4 inside A's: 4 away from C, positive.
    expect(found.slide.C).toBeCloseTo(-4, 1);
    expect(found.slide.D).toBeCloseTo(4, 1);
    expect(found.corners.A).toBeCloseTo(90 - atan(4, 800), 2);
    expect(found.corners.B).toBeCloseTo(90 + atan(4, 800), 2);
    expect(found.corners.C).toBeCloseTo(90 - atan(4, 800), 2);
    expect(found.consistent).toBe(true);
  });

  it('leaning the other way turns the signs', () => {
    const { slide, corners } = ask({ ...lengths(1800, [1796, 800], [-4, 800]), precision: 0.5 });
    expect(slide.C).toBeCloseTo(4, 1);
    expect(slide.D).toBeCloseTo(-4, 1);
    expect(corners.A).toBeGreaterThan(90);
  });

  it('equal diagonals of a taper prove nothing', () => {
    // Both back corners 5 in: diagonals both hypot(1795, 800) = 1965.2; each must go 5 out.
    const found = ask({ ...lengths(1800, [1795, 800], [5, 800]), precision: 0.5 });
    expect(found.shape).toBe('tapered');
    expect(found.slide.C).toBeCloseTo(5, 1);
    expect(found.slide.D).toBeCloseTo(5, 1);
  });

  it('one end off, the other square', () => {
    const found = ask({ ...lengths(1800, [1806, 800], [0, 800]), precision: 0.5 });
    expect(found.shape).toBe('tapered');
    expect(found.slide.C).toBeCloseTo(-6, 1);
    expect(found.slide.D).toBeCloseTo(0, 1);
  });

  it('a back edge that runs off: square at A and B, so nothing slides', () => {
    const found = ask({ ...lengths(900, [900, 590], [0, 600]), precision: 0.5 });
    expect(found.shape).toBe('tapered');
    expect(found.slide.C).toBeCloseTo(0, 1);
    expect(found.corners.C).toBeCloseTo(90 + atan(10, 900), 2);
    expect(found.corners.D).toBeCloseTo(90 - atan(10, 900), 2);
  });

  it('along a back edge that runs off, a slide is longer than the lean', () => {
    // C 6 outside; the back edge falls 60 over 900: 6 x hypot(906, 60) / 906.
    const found = ask({ ...lengths(900, [906, 540], [0, 600]), precision: 0.5 });
    expect(found.shape).toBe('irregular');
    expect(found.slide.C).toBeCloseTo((-6 * Math.hypot(906, 60)) / 906, 1);
  });

  it('a misread end is found out, and what it hides is not guessed', () => {
    // 20 more on one end of 800: the parallelogram law, differentiated, leaves 20 x 800 / (2 x 1969.8) = 4.06.
    const found = ask({ ...lengths(1800, [1800, 800], [0, 800]), right: 820, precision: 0.5 });
    expect(found).toMatchObject({ consistent: false, suspect: 'right', shape: 'undetermined' });
    expect(found.closing).toBeCloseTo(4.06, 1);
  });

  it('two diagonals equally long by 6 contradict the sides, but none stands out', () => {
    const base = lengths(1800, [1800, 800], [0, 800]);
    const found = ask({ ...base, diagonalAC: base.diagonalAC + 6, diagonalBD: base.diagonalBD + 6, precision: 0.5 });
    // (6 + 6) / 2.
    expect(found.closing).toBeCloseTo(6, 1);
    expect(found).toMatchObject({ consistent: false, suspect: null });
  });

  it('what one precision shows another hides', () => {
    const readings = lengths(1800, [1801, 800], [1, 800]);
    // Diagonals differ by 2 x 1 x 1800 / 1969.8 = 1.83: two errors of 0.5 don't hide that, two of 1 do.
    expect(ask({ ...readings, precision: 0.5 }).shape).toBe('racked');
    expect(ask({ ...readings, precision: 1 }).shape).toBe('square');
    // Not said: a tape, 0.5.
    expect(ask(readings)).toMatchObject({ shape: 'racked', precision: 0.5 });
    // Readings typed to the hundredth, precision 0: taken as 0.01.
    expect(ask({ ...readings, precision: 0 }).shape).toBe('racked');
  });
});

describe('a subset', () => {
  const racked = lengths(1800, [1804, 800], [4, 800]);

  it.each(Object.keys(racked))('five without %s fix the shape', (name) => {
    const { slide, shape, suspect, closing, consistent } = ask({ ...racked, [name]: undefined, precision: 0.1 });
    expect(shape).toBe('racked');
    expect({ suspect, closing, consistent }).toEqual({ suspect: null, closing: 0, consistent: true });
    expect(slide.C).toBeCloseTo(-4, 0);
    expect(slide.D).toBeCloseTo(4, 0);
  });

  it('front and both diagonals, though equal, tell nothing', () => {
    expect(ask({ front: 1800, diagonalAC: 1969.8, diagonalBD: 1969.8, precision: 0.5 })).toMatchObject({
      shape: 'undetermined',
      corners: { A: null, B: null, C: null, D: null },
      slide: { C: null, D: null },
      detectable: null,
    });
  });

  it('one triangle fixes one corner', () => {
    // cos B = (1800² + 800² - 1972²) / (2 x 1800 x 800), so the lean at C is (1972² - 1800² - 800²) / 3600 = 2.44.
    const found = ask({ front: 1800, right: 800, diagonalAC: 1972, diagonalBD: 1972 });
    expect(found.shape).toBe('undetermined');
    expect(found.slide.C).toBeCloseTo(-2.44, 2);
    expect(found.slide.D).toBeNull();
    expect(found.corners.A).toBeNull();
  });
});

describe('with a stick', () => {
  it('half the difference x diagonal / length with both ends parallel', () => {
    // 1 x 1969.77 / 1800 = 1.0943; AC the longer one, so C comes in.
    const found = ask({ length: 1800, width: 800, difference: 2 });
    expect(found.shape).toBe('racked');
    expect(found.slide.C).toBeCloseTo(-1.0943, 3);
    expect(found.slide.D).toBeCloseTo(1.0943, 3);
    expect(ask({ length: 1800, width: 800, difference: 2, farEnd: 'parallel' })).toEqual(found);
    expect(ask({ length: 1800, width: 800, difference: -2 }).slide.C).toBeCloseTo(1.0943, 3);
  });

  it('twice that with the left end square', () => {
    // Exactly: (1800 + x)² + 800² = (1969.7716 + 2)², x = 2.1884.
    const found = ask({ length: 1800, width: 800, difference: 2, farEnd: 'square' });
    expect(found.slide.C).toBeCloseTo(-2.1884, 3);
    expect(found.slide.D).toBe(0);
    expect(found.corners.A).toBe(90);
    expect(found.shape).toBe('tapered');
  });

  it('no difference is square as far as the ends are as said', () => {
    expect(ask({ length: 1800, width: 800, difference: 0 })).toMatchObject({ shape: 'square', slide: { C: 0, D: 0 } });
  });

  it('takes a length, a width and the diagonals themselves', () => {
    const found = ask({ length: 1800, width: 800, diagonalAC: 1970.8, diagonalBD: 1968.8 });
    expect(found.shape).toBe('racked');
    expect(found.slide.C).toBeCloseTo(-1.0943, 2);
  });
});

const good = { front: 1800, right: 800, back: 1800, left: 800, diagonalAC: 1969.8, diagonalBD: 1969.8 };
it.each([
  ['nothing', {}, 'readings'],
  ['an unknown name', { ...good, top: 3 }, 'top'],
  ['text', { ...good, right: '800' }, 'right'],
  ['null', { ...good, right: null }, 'right'],
  ['zero', { ...good, back: 0 }, 'back'],
  ['a negative length', { ...good, left: -800 }, 'left'],
  ['an absurd length', { front: 1e9 }, 'front'],
  ['a broken triangle', { front: 1800, right: 800, diagonalAC: 2700 }, 'diagonalAC'],
  ['a diagonal too short', { front: 1800, right: 800, diagonalAC: 950 }, 'diagonalAC'],
  ['a digit lost', { ...good, right: 80 }, 'right'],
  ['a digit too many', { ...good, diagonalBD: 19698 }, 'diagonalBD'],
  ['inches among millimetres', { ...good, left: 31.5 }, 'left'],
  ['a negative precision', { ...good, precision: -1 }, 'precision'],
  ['an absurd precision', { ...good, precision: 500 }, 'precision'],
  ['a length alone', { length: 1800 }, 'width'],
  ['no difference', { length: 1800, width: 800 }, 'difference'],
  ['a diagonal missing', { length: 1800, width: 800, diagonalAC: 1970 }, 'diagonalBD'],
  ['a side and a length', { length: 1800, width: 800, difference: 2, front: 1800 }, 'front'],
  ['a difference without a length', { difference: 2 }, 'length'],
  ['an impossible difference', { length: 1800, width: 800, difference: 900 }, 'difference'],
  ['an unknown far end', { length: 1800, width: 800, difference: 2, farEnd: 'bent' }, 'farEnd'],
  ['a far end without a length', { ...good, farEnd: 'square' }, 'farEnd'],
])('refuses %s', (_, input, field) => {
  // As it arrives: from JSON.
  expect(figure(JSON.parse(JSON.stringify(input)))).toMatchObject({ kind: 'problem', field });
});
