import { expect, test } from 'vitest';
import { howMany } from '../../src/ui/how-many.ts';

test('one is one, all else is many', () => {
  expect([0, 1, 2, 21].map((count) => howMany(count, 'board'))).toEqual([
    '0 boards',
    '1 board',
    '2 boards',
    '21 boards',
  ]);
});
