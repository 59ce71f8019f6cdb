import { expect, test } from 'vitest';
import { isProblem } from '../../../src/core/answer/problem.ts';
import { emptyForm, type FinishForm } from '../../../src/screens/finish/finish-form.ts';
import { stepsOf } from '../../../src/screens/finish/finish-steps.ts';
import { planFinish } from '../../../src/screens/finish/plan-finish.ts';
import { readFinishForm } from '../../../src/screens/finish/read-finish-form.ts';
import { startedFinish } from '../../../src/screens/finish/started-finish.ts';
import { sayRange } from '../../../src/ui/say-range.ts';
import { solved } from '../../core/gluing/helpers.ts';
import { part, pieceOf } from './cabinet.ts';

const chest = pieceOf([part('lid')], { id: 'chest' });

function start(change: Partial<FinishForm>, pieces = [chest]) {
  const form = { ...emptyForm, coats: '2', ...change };
  const read = readFinishForm(form);
  return startedFinish(pieces, form, read, planFinish(pieces, read));
}

test('what is kept: the piece, the can’s figures, what is bought, and steps with what each coat takes', () => {
  const kept = solved(
    start({
      rate: '10-12',
      containers: [
        { size: '1 l', price: '30' },
        { size: '0.1', price: '4' },
      ],
    }),
  );
  expect(kept.pieceId).toBe('chest');
  expect(kept.label).toEqual({ coverageLeast: 10, coverageMost: 12 });
  // 0.448 m² (by hand), as in the area's own test.
  expect(kept.area).toBeCloseTo(0.448, 12);
  expect(kept.containers).toEqual([{ litres: 0.1, price: 4, count: 1 }]);
  const coats = stepsOf(kept).filter(({ stage }) => stage === 'coat');
  // By hand: 0.448 / 11 x 1.1 = 0.0448 L on sealed wood, 1.2 times that on bare cherry.
  expect(coats.map(({ coatLitres }) => coatLitres)).toEqual([expect.closeTo(0.05376, 9), expect.closeTo(0.0448, 9)]);
  // Stored as JSON and back: nothing is lost.
  expect(JSON.parse(JSON.stringify(kept))).toEqual(kept);
});

test('cold air makes the kept waits longer', () => {
  const wait = (celsius: string) =>
    stepsOf(solved(start({ celsius })))
      .find(({ id }) => id === 'coat-1')
      ?.waits.at(-1)?.leastSeconds ?? 0;
  // The rule of the air: 10 degrees below 20 double it.
  expect(wait('10')).toBeCloseTo(2 * wait('20'), 6);
});

test('two parts go into every coat in as many batches as it needs', () => {
  const mix = { ...emptyForm.mix, on: true, a: '3', potLife: '40', pace: '60' };
  const coats = stepsOf(solved(start({ mix }))).filter(({ stage }) => stage === 'coat');
  expect(coats.map((coat) => coat.mix)).toEqual([
    { ratio: { a: 3, b: 1, by: 'volume' }, batches: 2, potLifeSeconds: 2400 },
    { ratio: { a: 3, b: 1, by: 'volume' }, batches: 2, potLifeSeconds: 2400 },
  ]);
});

test('grits too far apart keep it from starting', () => {
  const found = start({ firstGrit: '80', gritsMissing: [100, 120, 150, 180] });
  expect(isProblem(found) && found.field).toBe('owned');
});

test('a range says its unit once', () => {
  expect(sayRange({ least: 10, most: 14 }, 'm2PerLitre')).toBe('10 to 14 m²/L');
  expect(sayRange({ least: 0.35, most: 1.2 }, 'litres')).toBe('0.35 to 1.2 L');
  expect(sayRange({ least: 1800, most: 7200 }, 'seconds')).toBe('30 min to 2 h');
  expect(sayRange({ least: 9000, most: 12600 }, 'seconds')).toBe('2 h 30 min to 3 h 30 min');
  expect(sayRange({ least: 4800, most: 7200 }, 'seconds')).toBe('1 h 20 min to 2 h');
  expect(sayRange({ least: 86400, most: 86400 }, 'seconds')).toBe('24 h');
  expect(sayRange({ least: 1, most: 2 }, 'count')).toBe('1 to 2');
});
