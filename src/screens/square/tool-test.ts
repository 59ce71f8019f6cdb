import { type Phrase, phrase } from '../../core/answer/phrase.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import type { Working } from '../../core/answer/worked.ts';
import { straightedgeTest } from '../../core/square/straightedge-test.ts';
import { trySquareTest } from '../../core/square/try-square-test.ts';
import { windingSticks } from '../../core/square/winding-sticks.ts';
import type { Reference } from '../../store/records/shop.ts';
import { sayToolError } from './tool-error.ts';

export type ToolKind = NonNullable<Reference['kind']>;
export type ToolEntry = 'gap' | 'length' | 'swapped' | 'width';

/** What was seen in a test, mm; with winding sticks also the width of the board, and the gap with the sticks swapped. */
export interface ToolSeen {
  readonly kind: ToolKind;
  /** Positive one way, negative the other; so is `swapped`. */
  readonly gap: number;
  readonly length: number;
  readonly width?: number | undefined;
  readonly swapped?: number | undefined;
  /** The sticks as an earlier test found them. */
  readonly known?: Reference | undefined;
}

export interface ToolTest {
  readonly large: Phrase;
  readonly say: Phrase;
  readonly working: Working;
  /** The tool's own error, to be kept with it; null when this test doesn't tell it. */
  readonly own: Pick<Reference, 'error' | 'length'> | null;
}

/** What a test says of a tool. */
export function toolTest(seen: ToolSeen): Outcome<ToolTest> {
  const { kind, gap, length } = seen;
  if (kind === 'sticks') return sticks(seen);
  return kind === 'square' ? trySquare(gap, length) : straightedge(gap, length);
}

function trySquare(gap: number, length: number): Outcome<ToolTest> {
  const test = trySquareTest(gap, length);
  if (isProblem(test)) return test;
  const own = { error: test.value.inside - 90 };
  return {
    large: sayToolError(own),
    say: phrase`Out by ${mm(Math.abs(gap) / 2)} over ${mm(length)}.`,
    working: test.working,
    own,
  };
}

function straightedge(gap: number, length: number): Outcome<ToolTest> {
  const test = straightedgeTest(gap, length);
  if (isProblem(test)) return test;
  const own = { error: test.value, length };
  return {
    large: sayToolError({ kind: 'straightedge', ...own }),
    say: phrase`In the middle of the line.`,
    working: test.working,
    own,
  };
}

function sticks({ gap, length, width = 0, swapped, known }: ToolSeen): Outcome<ToolTest> {
  // Swapping turns the sticks' own error round, so a known error says what the swapped sticks would show.
  const fromKnown = known?.length ? gap - (2 * known.error * length) / known.length : null;
  const test = windingSticks(gap, swapped ?? fromKnown, length, width);
  if (isProblem(test)) return test;
  const { wind, sticks: error } = test.value;
  return {
    large: phrase`${mm(Math.abs(wind))} of wind in the board`,
    say:
      error === null
        ? phrase`Sticks taken as true. Swap them and sight again to find their error.`
        : phrase`The sticks’ own error, ${mm(Math.abs(error))} over ${mm(length)}, is taken out.`,
    working: test.working,
    own: swapped === undefined || error === null ? null : { error, length },
  };
}
