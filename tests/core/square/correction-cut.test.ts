import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type CutState, correctionCut } from '../../../src/core/square/correction-cut.ts';
import { cornerAngles, type Quadrilateral } from '../../../src/core/square/quadrilateral.ts';
import { type Slides, slidesOf } from '../../../src/core/square/slide.ts';
import { crooked, rectangleOf } from './random-pieces.ts';

/** The panel once its corner has moved along its edge, as far and the way that is said. */
function corrected(panel: Quadrilateral, end: keyof Slides, how: CutState): Quadrilateral {
  const { move } = correctionCut(panel, end, how).value;
  const [from, other] = [panel[move.corner], panel[move.other]];
  const along = ((move.towards ? 1 : -1) * move.distance) / Math.hypot(other.x - from.x, other.y - from.y);
  return {
    ...panel,
    [move.corner]: { x: from.x + along * (other.x - from.x), y: from.y + along * (other.y - from.y) },
  };
}

const state = fc.constantFrom<CutState>('line', 'sawn');

it('makes both ends square, the corner named moved that far that way along its edge', () => {
  fc.assert(
    fc.property(crooked, state, (panel, how) => {
      const angles = cornerAngles(corrected(corrected(panel, 'C', how), 'D', how));
      // Rounding, and moves too small to be worth a word: 1e-6 mm over 50.
      expect(angles.A).toBeCloseTo(90, 5);
      expect(angles.B).toBeCloseTo(90, 5);
    }),
  );
});

it('never gains wood on a sawn edge', () => {
  fc.assert(
    fc.property(crooked, fc.constantFrom<keyof Slides>('C', 'D'), (panel, end) => {
      expect(correctionCut(panel, end, 'sawn').value.move.towards).toBe(true);
    }),
  );
});

it('is the slide when the front end stays', () => {
  fc.assert(
    fc.property(crooked, (panel) => {
      const slide = slidesOf(panel);
      const moved = (end: keyof Slides) => {
        const move = correctionCut(panel, end, 'line').value.move;
        return move.towards ? -move.distance : move.distance;
      };
      expect(moved('C')).toBeCloseTo(slide.C, 5);
      expect(moved('D')).toBeCloseTo(slide.D, 5);
    }),
  );
});

/** Gauss's shoelace formula. */
const area = ({ A, B, C, D }: Quadrilateral) =>
  [A, B, C, D].reduce((sum, p, n, all) => {
    const q = all[(n + 1) % 4] ?? A;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);

it('loses the least wood that a square cut of a sawn edge can', () => {
  fc.assert(
    fc.property(crooked, fc.double({ min: -1, max: 1, noNaN: true }), (panel, part) => {
      const { lost } = correctionCut(panel, 'C', 'sawn').value;
      const after = corrected(panel, 'C', 'sawn');
      // Any other square cut, somewhere about the end: what needs wood that is not there can't be sawn.
      const at = (panel.B.x + panel.C.x) / 2 + part * 0.05 * panel.B.x;
      if (at > Math.min(panel.B.x, panel.C.x)) return;
      const along = (at - panel.D.x) / (panel.C.x - panel.D.x);
      const other = { x: at, y: panel.D.y + along * (panel.C.y - panel.D.y) };
      // Rounding, of areas up to 36 square metres.
      expect(area(after)).toBeGreaterThanOrEqual(area({ ...panel, B: { x: at, y: 0 }, C: other }) - 1e-3);
      expect(lost).toBeGreaterThanOrEqual(Math.abs(panel.B.x - panel.C.x) - 1e-6);
    }),
  );
});

const leaning: Quadrilateral = { ...rectangleOf(1800, 800), C: { x: 1802, y: 800 } };

it('says which end of the guide, which way and how far', () => {
  const { value } = correctionCut(leaning, 'C', 'line');
  expect(value.move).toEqual({ corner: 'C', other: 'D', towards: true, distance: 2 });
  expect(value.sayShared?.text).toBe('Or share it: C {0} towards D, B {1} away from A.');
  expect(value.sayShared?.quantities).toMatchObject({ 0: { value: 1 }, 1: { value: 1 } });
  expect(value.lost).toBe(2);
});

it('brings the front end in where a sawn edge has no wood at the back', () => {
  const short: Quadrilateral = { ...leaning, C: { x: 1798, y: 800 } };
  const { value } = correctionCut(short, 'C', 'sawn');
  expect(value.move).toEqual({ corner: 'B', other: 'A', towards: true, distance: 2 });
  expect(value).toMatchObject({ lost: 2, sayShared: null });
});

it('leaves a square cut alone', () => {
  const { value } = correctionCut(leaning, 'D', 'line');
  expect(value).toMatchObject({
    move: { distance: 0 },
    lost: 0,
  });
});
