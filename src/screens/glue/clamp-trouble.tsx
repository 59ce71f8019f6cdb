import type { Busiest } from '../../core/gluing/busiest.ts';
import { Card } from '../../ui/card.tsx';
import { clockTime } from '../../ui/clock-time.ts';
import { Facts } from '../../ui/facts.tsx';
import type { DayStages } from './day-stages.ts';

interface Props {
  short: DayStages['short'];
  /** Where most would be spoken for if nothing waited for clamps. */
  worst: Busiest | undefined;
  owned: number;
  now: number;
}

/** Where the clamps don't go round. */
export function ClampTrouble({ short, worst, owned, now }: Props) {
  const twice = worst && worst.clamps > owned;
  if (short.length === 0 && !twice) return null;
  return (
    <Card title="Clamps">
      {twice && (
        <p>
          You have {owned} clamps. At once, {worst.stages.slice(0, 2).join(' and ')}
          {worst.stages.length > 2 && ` and ${worst.stages.length - 2} more`} would take {worst.clamps} from{' '}
          {clockTime(worst.from, now)}: each waits until clamps are free.
        </p>
      )}
      {short.length > 0 && (
        <details>
          <summary>More clamps than you have: {short.length}</summary>
          <Facts rows={short.map(({ name, clamps }) => [name, `${clamps} clamps`])} />
        </details>
      )}
    </Card>
  );
}
