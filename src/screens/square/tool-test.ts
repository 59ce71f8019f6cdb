import { type Phrase, phrase } from '../../core/answer/phrase.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { degrees, mm } from '../../core/answer/quantity.ts';
import type { Working } from '../../core/answer/worked.ts';
import { straightedgeTest } from '../../core/square/straightedge-test.ts';
import { trySquareTest } from '../../core/square/try-square-test.ts';
import { windingSticks } from '../../core/square/winding-sticks.ts';
import type { Reference } from '../../store/records/shop.ts';

export type ToolKind = NonNullable<Reference['kind']>;
export type ToolEntry = 'gap' | 'length' | 'swapped' | 'width';

/** What was seen in a test, mm. */
export interface ToolSeen {
  readonly kind: ToolKind;
  readonly values: Readonly<Partial<Record<ToolEntry, number>>>;
  /** Whether the gap, and the one with the sticks swapped, is the way that counts as positive. */
  readonly positive: boolean;
  readonly swappedPositive: boolean;
  /** The sticks' own error from an earlier test, mm over `length`. */
  readonly known?: { readonly error: number; readonly length: number } | undefined;
}

export interface ToolTest {
  readonly large: Phrase;
  readonly say: Phrase;
  readonly working: Working;
  /** The tool's own error, to be kept with it; null when this test doesn't tell it. */
  readonly own: Pick<Reference, 'error' | 'length'> | null;
}

const signed = (value: number, positive: boolean) => (positive ? value : -value);

/** What a test says of a tool; undefined until all that it needs is there. */
export function toolTest(seen: ToolSeen): Outcome<ToolTest> | undefined {
  const { kind, values, positive } = seen;
  const { gap, length } = values;
  if (gap === undefined || length === undefined) return undefined;
  if (kind === 'square') return trySquare(signed(gap, positive), length);
  if (kind === 'straightedge') return straightedge(signed(gap, positive), length);
  return values.width === undefined ? undefined : sticks(signed(gap, positive), length, values.width, seen);
}

function trySquare(gap: number, length: number): Outcome<ToolTest> {
  const test = trySquareTest(gap, length);
  if (isProblem(test)) return test;
  const { inside, perMetre } = test.value;
  return {
    large: gap === 0 ? phrase('The lines are one: true') : phrase('{inside} inside', { inside: degrees(inside) }),
    say: phrase('Out by {by} over {length}.', {
      by: mm(Math.abs(perMetre * length) / 1000),
      length: mm(length),
    }),
    working: test.working,
    own: { error: inside - 90 },
  };
}

function straightedge(gap: number, length: number): Outcome<ToolTest> {
  const test = straightedgeTest(gap, length);
  if (isProblem(test)) return test;
  const bow = { by: mm(Math.abs(test.value)) };
  return {
    large: gap === 0 ? phrase('The lines are one: straight') : phrase(`{by} ${gap > 0 ? 'crowned' : 'hollow'}`, bow),
    say: phrase('In the middle, over {length}.', { length: mm(length) }),
    working: test.working,
    own: { error: test.value, length },
  };
}

function sticks(
  gap: number,
  length: number,
  width: number,
  { values, swappedPositive, known }: ToolSeen,
): Outcome<ToolTest> {
  const again = values.swapped === undefined ? undefined : signed(values.swapped, swappedPositive);
  // Swapping turns the sticks' own error round, so a known error says what the swapped sticks would show.
  const fromKnown = known ? gap - (2 * known.error * length) / known.length : null;
  const test = windingSticks(gap, again ?? fromKnown, length, width);
  if (isProblem(test)) return test;
  const { wind, sticks: error } = test.value;
  const out = { by: mm(Math.abs(error ?? 0)), length: mm(length) };
  return {
    large: phrase('{wind} of wind in the board', { wind: mm(Math.abs(wind)) }),
    say:
      error === null
        ? phrase('Sticks taken as true. Swap them and sight again to find their error.')
        : phrase("The sticks' own error, {by} over {length}, is taken out.", out),
    working: test.working,
    own: again === undefined || error === null ? null : { error, length },
  };
}
