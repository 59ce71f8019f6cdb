import { expect, test } from 'vitest';
import { withOptional } from '../../src/store/records/with-optional.ts';

test('a property is put in, replaced or left out; the record itself stays as it was', () => {
  const record: { id: string; note?: string } = { id: 'a', note: 'b' };
  expect(withOptional(record, 'note', 'c')).toEqual({ id: 'a', note: 'c' });
  expect(Object.keys(withOptional(record, 'note', undefined))).toEqual(['id']);
  expect(withOptional({ id: 'a' } as typeof record, 'note', 'd')).toEqual({ id: 'a', note: 'd' });
  expect(record).toEqual({ id: 'a', note: 'b' });
});
