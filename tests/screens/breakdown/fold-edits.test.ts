import { describe, expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { badCorner, badTrim, type PanelFold } from '../../../src/core/breakdown/folded-panel.ts';
import {
  changedAt,
  firstFold,
  foldLayout,
  withoutSection,
  withSection,
} from '../../../src/screens/breakdown/fold-edits.ts';
import { foldOf } from '../../../src/store/records/part-fold.ts';
import type { Json } from '../../../src/store/records/record.ts';
import { part } from './samples.ts';

const kerf = 3;
const top = part('top', { length: 1908.49 });
const folded = (fold: PanelFold | undefined) => foldLayout({ ...top, fold: fold as unknown as Json }, kerf);

function lengthOf(fold: PanelFold): number {
  const layout = folded(fold);
  if (!layout || isProblem(layout)) throw new Error('no layout');
  return layout.length;
}

describe('a panel that folds', () => {
  test('the first fold comes out of the panel as it is', () => {
    // 1e-9: the same sum in another order.
    expect(lengthOf(firstFold(top, kerf))).toBeCloseTo(top.length, 9);
  });

  test('sides of 450 and a top of 1000: two mitres of kerf / cos 45', () => {
    const sections = [450, 1000, 450].map((length, n) => ({ name: `s${n}`, length }));
    const corner = { degrees: 90, trim: 0 };
    // Geometry: 1900 + 2 × 3 × √2.
    expect(lengthOf({ sections, corners: [corner, corner] })).toBeCloseTo(1900 + 6 * Math.SQRT2, 9);
  });

  test('one part more repeats the last at a square corner; one less takes it away, and two are the least', () => {
    const two = firstFold(top, kerf);
    const three = withSection(two);
    expect(three.sections.map(({ name }) => name)).toEqual(['First', 'Second', 'Part 3']);
    expect(three.corners).toHaveLength(2);
    expect(withoutSection(three)).toEqual(two);
    expect(withoutSection(two)).toBeUndefined();
  });

  test('one section or one corner changes, the others stay', () => {
    const two = firstFold(top, kerf);
    expect(changedAt(two.sections, 1, { length: 500 })).toEqual([two.sections[0], { name: 'Second', length: 500 }]);
    expect(changedAt(withSection(two).corners, 1, { trim: 2 }).map(({ trim }) => trim)).toEqual([0, 2]);
  });

  test('a solid, a part without a fold, and a damaged fold don’t fold', () => {
    const fold = firstFold(top, kerf) as unknown as Json;
    expect(foldOf({ panel: true, fold })).toBeDefined();
    expect(foldOf({ panel: false, fold })).toBeUndefined();
    expect(foldOf({ panel: true })).toBeUndefined();
    for (const bad of [3, null, [], { sections: [] }, { sections: [{ name: 'a', length: 1 }], corners: [{}] }])
      expect(foldOf({ panel: true, fold: bad as Json })).toBeUndefined();
  });

  test('corners and trims that no saw makes', () => {
    expect([59, 60, 180, 181].map((degrees) => badCorner(degrees) === undefined)).toEqual([false, true, true, false]);
    expect([-1, 0, 100, 101].map((trim) => badTrim(trim) === undefined)).toEqual([false, true, true, false]);
  });
});
