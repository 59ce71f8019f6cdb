import { expect, test } from 'vitest';
import { day } from '../../src/ui/day.ts';

const now = new Date('2026-03-02T09:00').getTime();

test('a day of this year stands without its year, another with it, and a day means the day where the phone is', () => {
  const inWords = (text: string, year?: 'numeric') =>
    new Date(`${text}T12:00`).toLocaleDateString(undefined, { day: 'numeric', month: 'short', year });
  expect(day(now, now)).toBe(inWords('2026-03-02'));
  expect(day('2026-01-01', now)).toBe(inWords('2026-01-01'));
  expect(day('2025-12-31', now)).toBe(inWords('2025-12-31', 'numeric'));
  expect(day('2025-12-31', now)).toContain('2025');
  expect(day('2026-01-01', now)).not.toContain('2026');
});
