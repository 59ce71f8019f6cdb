import { afterAll, expect, TestRunner } from 'vitest';
import { keepSection, type OutsideRow, sectionOf, writtenSection } from './outside-page.ts';
import type { OutsideSourceId } from './outside-sources.ts';

interface Where {
  /** What is found, in words that stand alone on a page: `cherry, 400 mm flat-sawn, 8 to 11 %: change, mm`. */
  readonly what: string;
  readonly source: OutsideSourceId;
  /** Where in the source: `Table 13-5`. */
  readonly at?: string;
  /** How far numbers may lie apart, in their own unit; a comment beside the check says why. Nothing: exactly equal. */
  readonly tolerance?: number;
}

interface OutsideCheck extends Where {
  readonly expected: unknown;
  readonly got: unknown;
  /** The tolerance goes up only, and less than expected is welcome. */
  readonly atMost?: boolean;
}

const rows: OutsideRow[] = [];
type Tests = NonNullable<ReturnType<typeof TestRunner.getCurrentTest>>['file'];
let file: Tests | undefined;

/** Holds a result against one from outside of the project, and notes it for the page of all such checks. */
export function outside(check: OutsideCheck): void {
  const { expected, got, tolerance = 0, atMost = false } = check;
  compare(check, got, expected, atMost);
  note(check, written(expected, tolerance), written(got, tolerance), atMost);
}

/**
 * The same for many cases, as when a library does the same sum on random input: gives what compares one case. The page
 * has one row for all of them.
 */
export function outsideCases(where: Where & { readonly cases: string }): (got: unknown, expected: unknown) => void {
  let noted = false;
  return (got, expected) => {
    compare(where, got, expected);
    if (!noted) note(where, 'the same', `the same in ${where.cases}`);
    noted = true;
  };
}

function compare({ what, tolerance = 0 }: Where, got: unknown, expected: unknown, atMost = false): void {
  if (tolerance === 0) {
    expect(got, what).toEqual(expected);
    return;
  }
  const [ours = [], theirs = []] = [got, expected].map((value) => [value].flat() as number[]);
  expect(ours, what).toHaveLength(theirs.length);
  for (const [index, value] of theirs.entries()) {
    const off = (ours[index] ?? Number.NaN) - value;
    expect(atMost ? off : Math.abs(off), `${what}: ${got} for ${expected}`).toBeLessThanOrEqual(tolerance);
  }
}

/** Numbers to one digit more than the tolerance, so that rounding elsewhere changes no page. */
function written(value: unknown, tolerance: number): string {
  const digits = tolerance === 0 ? 12 : Math.min(12, Math.max(0, Math.ceil(-Math.log10(tolerance))) + 1);
  const round = (one: number): number => Number(one.toFixed(digits));
  if (typeof value === 'string') return value;
  if (Array.isArray(value)) return value.map((one) => written(one, tolerance)).join(', ');
  return JSON.stringify(value, (_, inner) => (typeof inner === 'number' ? round(inner) : inner));
}

function note({ what, source, at, tolerance = 0 }: Where, expected: string, got: string, atMost = false): void {
  file = TestRunner.getCurrentTest()?.file;
  rows.push({
    what,
    source: at === undefined ? source : `${source}, ${at}`,
    expected,
    got,
    tolerance: tolerance === 0 ? 'none' : `${Number(tolerance.toPrecision(2))}${atMost ? ' more' : ''}`,
  });
}

/** Whether all of it was run, and well. */
const passed = (tasks: Tests['tasks']): boolean =>
  tasks.every((task) => (task.type === 'suite' ? passed(task.tasks) : task.result?.state === 'pass'));

afterAll(() => {
  // A part of the checks, or failed ones, say nothing about the page.
  if (!file || !passed(file.tasks)) return;
  const section = writtenSection(file.name, rows);
  if (process.env.UPDATE_CHECKS) keepSection(file.name, section);
  expect(sectionOf(file.name), 'tests/OUTSIDE-CHECKS.md is stale: run this test with UPDATE_CHECKS=1').toBe(section);
});
