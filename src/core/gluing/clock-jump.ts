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

export interface ClockJump {
  /** Positive when the wall clock is ahead of where it should be. */
  readonly seconds: number;
  /** `set-back` is certain. Forward may also be a phone whose steady clock stood still in sleep. */
  readonly kind: 'set-back' | 'forward';
  readonly said: Phrase;
}

/** Clocks are trimmed by the network a little at a time: less than this is no jump. */
const jumpTolerance = 5;

/**
 * Whether the clock on the wall was set between two readings.
 *
 * @param before the earlier reading
 * @param now the later one, by order of taking, whatever the clocks show
 * @returns the jump in seconds, or `undefined`
 *
 * Valid: a change of time zone or daylight saving is no jump, since instants don't move. Over two runs of the steady
 * clock only a wall clock that runs backwards can be told.
 * Errors: none; a reading that is not a number tells nothing.
 * Example: an hour passed on the steady clock, and the wall clock went back 23 hours: set back by 86 400 s.
 * Source: arithmetic.
 */
export function clockJump(before: ClockReading, now: ClockReading): ClockJump | undefined {
  const wall = (now.wall - before.wall) / 1000;
  const steady = before.run === now.run ? (now.steady - before.steady) / 1000 : Math.max(wall, 0);
  const jump = wall - steady;
  if (!Number.isFinite(jump) || Math.abs(jump) <= jumpTolerance) return undefined;
  return jump < 0
    ? {
        seconds: jump,
        kind: 'set-back',
        said: phrase(
          "The phone's clock was set back by {jump}. The timers show that much too long: set the clock right.",
          {
            jump: seconds(-jump),
          },
        ),
      }
    : {
        seconds: jump,
        kind: 'forward',
        said: phrase('The clock went ahead by {jump} more than was counted: the phone slept, or the clock was set.', {
          jump: seconds(jump),
        }),
      };
}
