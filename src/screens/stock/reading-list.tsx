import type { ComponentChildren } from 'preact';
import { offerUndo } from '../../app/notices.ts';
import { Button } from '../../ui/button.tsx';
import { day } from '../../ui/day.ts';
import { Fold } from '../../ui/fold.tsx';
import { howMany } from '../../ui/how-many.ts';
import { without } from '../../ui/without.ts';

interface Reading {
  readonly at: number;
}

interface Props<R extends Reading> {
  readings: readonly R[] | undefined;
  edit(change: (now: readonly R[] | undefined) => readonly R[]): void;
  children(reading: R): ComponentChildren;
}

/** Readings as they were noted, newest first; each can go, and come back. */
export function ReadingList<R extends Reading>({ readings = [], edit, children }: Props<R>) {
  if (readings.length === 0) return null;
  return (
    <Fold label={howMany(readings.length, 'reading')}>
      <ul class="rows">
        {readings
          .toSorted((a, b) => b.at - a.at)
          .map((reading) => (
            <li>
              <span>
                {children(reading)} <span class="soft small">{day(reading.at)}</span>
              </span>
              <Button
                onClick={() => {
                  edit((now) => without(now, reading));
                  offerUndo('Reading deleted.', () => edit((now = []) => [...now, reading]));
                }}
              >
                Delete
              </Button>
            </li>
          ))}
      </ul>
    </Fold>
  );
}
