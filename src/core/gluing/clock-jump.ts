import { type Phrase, phrase } from '../answer/phrase.ts';
import { seconds } from '../answer/quantity.ts';

/** Both clocks read at the same moment. */
export interface ClockReading {
  /** Clock on the wall, ms since the epoch. */
  readonly wall: number;
  /** A clock that nobody can set, ms since some moment of its own. */
  readonly steady: number;
  /** Names the run of the steady clock: readings of two runs can't be compared. */
  readonly run: string;
}

/** Clocks are trimmed by the network a little at a time: less than this is no jump. */
const jumpTolerance = 5;

/**
 * Whether the clock on the wall was set between two readings. Back is certain; on may also be a steady clock that stood
 * still in sleep: readings from before and after one are of two runs.
 *
 * @param before the earlier reading
 * @param now the later one, by order of taking, whatever the clocks show
 * @returns what to say of the jump, in seconds; `undefined` when there was none
 * @valid a change of time zone or daylight saving is no jump, since instants don't move. Over two runs of the steady
 *   clock only a wall clock that runs backwards can be told
 * @example clockJump({ wall: 864e5, steady: 0, run: 'a' }, { wall: 36e5, steady: 36e5, run: 'a' })
 *   // => { quantities: { 0: { value: 86_400 } } }
 * @source arithmetic
 */
export function clockJump(before: ClockReading, now: ClockReading): Phrase | undefined {
  const wall = (now.wall - before.wall) / 1000;
  const steady = before.run === now.run ? (now.steady - before.steady) / 1000 : Math.max(wall, 0);
  const jump = wall - steady;
  if (!Number.isFinite(jump) || Math.abs(jump) <= jumpTolerance) return undefined;
  return jump < 0
    ? phrase`The phone’s clock was set back by ${seconds(-jump)}: timers show that much too long. Set it right.`
    : phrase`The clock is ${seconds(jump)} ahead of what was counted: was it set?`;
}
