import { seconds } from '../core/answer/quantity.ts';
import { Amount } from './amount.tsx';

/** How long a wait still runs, in seconds, or how long ago it ended. */
export function TimeLeft({ left }: { left: number }) {
  return (
    <span class="figure words">
      {left <= 0 && 'Ended '}
      <Amount of={seconds(Math.abs(left))} /> {left > 0 ? 'left' : 'ago'}
    </span>
  );
}
