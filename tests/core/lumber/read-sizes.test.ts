import { expect, test } from 'vitest';
import { readSizes, type WrittenSizes } from '../../../src/core/lumber/read-sizes.ts';

const good: WrittenSizes = { quarters: '8/4', width: '6 1/4', length: '96' };
const read = (change: Partial<WrittenSizes> = {}) => readSizes({ ...good, ...change }, () => 'in');

test('sizes come in mm, each field in its own unit', () => {
  expect(read().sizes).toEqual({ thickness: { quarters: 8 }, width: 158.75, length: 2438.4 });
  const { sizes, problems } = readSizes({ thickness: '27.4', width: '8', farWidth: '7', length: '2400' }, (field) =>
    field === 'width' || field === 'farWidth' ? 'in' : 'mm',
  );
  expect(sizes).toEqual({ thickness: { mm: 27.4 }, width: 203.2, farWidth: 177.8, length: 2400 });
  expect(problems.size).toBe(0);
});

test('each field has at most one problem: what can’t be read, or what can’t be', () => {
  const fields = (change: Partial<WrittenSizes>) => [...read(change).problems.keys()];
  expect(fields({ width: 'wide', farWidth: '', length: '90 ft' })).toEqual(['width', 'farWidth', 'length']);
  expect(fields({ quarters: '4.3' })).toEqual(['quarters']);
  expect(fields({ quarters: undefined })).toEqual(['thickness']);
  expect(fields({ thickness: '27 mm' })).toEqual(['thickness']);
  for (const [field, problem] of read({ width: '', length: '0' }).problems) expect(problem.field).toBe(field);
});
