import type { GluePhase } from '../../core/gluing/glue-up.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { adhesiveById } from '../../tables/adhesives.ts';
import { Amount } from '../../ui/amount.tsx';
import { clockTime } from '../../ui/clock-time.ts';
import { Facts } from '../../ui/facts.tsx';
import { sayRange } from '../../ui/say-range.ts';

interface Props {
  phases: readonly GluePhase[];
  now: number;
  glueup: Glueup;
}

/** What comes when, along the clock. */
export function PhaseList({ phases, now, glueup }: Props) {
  const { adhesive, celsius, label } = glueup;
  return (
    <section class="card" aria-label="What comes when">
      <Facts
        rows={phases.map(({ id, title, takes, until, over }) => [
          <>
            {title}{' '}
            <span class="soft small">
              <span class="nowrap">{sayRange(takes, 'seconds')}</span>
              {label?.seconds?.[id] && ', from the label'}
            </span>
          </>,
          over ? 'over' : clockTime(until, now),
        ])}
      />
      <p class="soft small">
        {adhesiveById(adhesive)?.name ?? adhesive} at <Amount of={{ value: celsius, unit: 'celsius' }} />.
      </p>
    </section>
  );
}
