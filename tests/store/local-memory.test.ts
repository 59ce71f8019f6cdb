import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { forgetAll, remember, remembered } from '../../src/store/local-memory.ts';

/** Local storage as browsers have it: its keys are its own properties. */
const storage = () =>
  Object.create({
    getItem(this: Record<string, string>, key: string) {
      return Object.hasOwn(this, key) ? this[key] : null;
    },
    setItem(this: Record<string, string>, key: string, value: string) {
      this[key] = value;
    },
    removeItem(this: Record<string, string>, key: string) {
      delete this[key];
    },
  });

beforeEach(() => vi.stubGlobal('localStorage', storage()));
afterEach(() => vi.unstubAllGlobals());

test('what is remembered is found again, and what is not is as it is otherwise', () => {
  expect(remembered('look', { theme: 'light' })).toEqual({ theme: 'light' });
  remember('look', { theme: 'dark' });
  expect(remembered('look', { theme: 'light' })).toEqual({ theme: 'dark' });
});

test('a broken value, a full phone or no storage at all does no harm', () => {
  localStorage.setItem('boardwright-look', '{"theme":');
  expect(remembered('look', {})).toEqual({});
  vi.spyOn(localStorage, 'setItem').mockImplementation(() => {
    throw new DOMException('The phone is full.', 'QuotaExceededError');
  });
  remember('look', { theme: 'dark' });
  expect(remembered('look', {})).toEqual({});
  vi.stubGlobal('localStorage', undefined);
  remember('look', { theme: 'dark' });
  expect(remembered('look', {})).toEqual({});
  forgetAll();
});

test('all of it is forgotten, and nothing of other pages on the same host', () => {
  remember('look', { theme: 'dark' });
  remember('failed-writes', []);
  localStorage.setItem('another-page', 'its own');
  forgetAll();
  expect(Object.keys(localStorage)).toEqual(['another-page']);
});
