import { useEffect, useState } from 'preact/hooks';
import { useNow } from '../../app/now.ts';
import type { Phrase } from '../../core/answer/phrase.ts';
import { type ClockReading, clockJump } from '../../core/gluing/clock-jump.ts';
import { readDraft, writeDraft } from '../../store/drafts.ts';

const key = 'clock-1';

/** A reading is kept for after a killed tab, no oftener than this, ms. */
const keptEvery = 15_000;

/** Out of sight the phone may sleep, and its steady clock with it: what it counts afterwards is another run. */
let outOfSight = 0;
document.addEventListener('visibilitychange', () => {
  outOfSight++;
});

const read = (): ClockReading => ({
  wall: Date.now(),
  steady: performance.now(),
  run: `${performance.timeOrigin} ${outOfSight}`,
});

let last: ClockReading | undefined;
let keptAt = Number.NEGATIVE_INFINITY;

/** Whether the phone's clock was set since it was last looked at, be it before a restart; and the way to put that aside. */
export function useClockJump(): readonly [Phrase | undefined, () => void] {
  const now = useNow();
  const [jump, setJump] = useState<Phrase>();
  const [ready, setReady] = useState(last !== undefined);
  useEffect(() => {
    if (last) return;
    readDraft<ClockReading>(key).then(
      (kept) => {
        last ??= kept;
        setReady(true);
      },
      () => setReady(true),
    );
  }, []);
  useEffect(() => {
    if (!ready) return;
    const reading = read();
    const found = last && clockJump(last, reading);
    last = reading;
    if (found) setJump(found);
    if (found || reading.steady - keptAt > keptEvery) {
      keptAt = reading.steady;
      void writeDraft(key, reading);
    }
  }, [now, ready]);
  return [jump, () => setJump(undefined)];
}
