import { onChange } from '../store/changes.ts';
import type { Timer } from '../store/records/timer.ts';
import { timers } from '../store/timers.ts';
import { notify } from './notices.ts';

/** Browsers count at most this far ahead; nearer is looked again. */
const longestWait = 2 ** 31 - 1;

let audio: AudioContext | undefined;

/** A page may only make a sound once it has been tapped. */
function readySound(): void {
  audio ??= new AudioContext();
  void audio.resume();
}

/** Three rising tones, of a second in all. */
function sound(): void {
  if (audio?.state !== 'running') return;
  const start = audio.currentTime;
  for (const [n, pitch] of [660, 880, 1100].entries()) {
    const tone = audio.createOscillator();
    tone.frequency.value = pitch;
    tone.connect(audio.destination);
    tone.start(start + n * 0.35);
    tone.stop(start + n * 0.35 + 0.25);
  }
}

async function tell({ id, name, phase }: Timer): Promise<void> {
  notify(`${name}. ${phase}: time is up.`);
  sound();
  navigator.vibrate?.([400, 200, 400]);
  if (!('Notification' in window) || Notification.permission !== 'granted') return;
  const worker = await navigator.serviceWorker?.getRegistration();
  await worker?.showNotification(name, { body: `${phase}: time is up.`, tag: id });
}

/** Rings each timer that ends while the app is open. What ended before says on its screen how long ago. */
export function followAlarms(): void {
  let running: readonly Timer[] = [];
  let told = Date.now();
  let waiting: ReturnType<typeof setTimeout> | undefined;

  const look = () => {
    clearTimeout(waiting);
    const now = Date.now();
    for (const timer of running) if (timer.endsAt > told && timer.endsAt <= now) void tell(timer);
    told = now;
    const next = Math.min(...running.map(({ endsAt }) => endsAt).filter((at) => at > now));
    if (Number.isFinite(next)) waiting = setTimeout(look, Math.min(next - now, longestWait));
  };
  const read = async () => {
    running = (await timers.all()).filter(({ doneAt }) => doneAt === undefined);
    look();
    if (running.length === 0) return;
    if (navigator.userActivation?.hasBeenActive) readySound();
    // Some browsers want the tap itself; the next one will do.
    document.addEventListener('pointerdown', readySound, { once: true });
  };
  const readAgain = () => void read().catch(() => {});
  onChange(['timer'], readAgain);
  // A sleeping phone holds its timeouts back: look at the clock as soon as it is awake.
  document.addEventListener('visibilitychange', look);
  readAgain();
}
