import type { GluePhase } from '../../core/gluing/glue-up.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { findAdhesive } from '../../tables/adhesives.ts';
import { Amount } from '../../ui/amount.tsx';
import { clockTime } from '../../ui/clock-time.ts';
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
      <dl class="facts">
        {phases.map(({ id, title, takes, until, over }) => (
          <>
            <dt class={over ? 'soft' : ''}>
              {title}{' '}
              <span class="soft small">
                {sayRange(takes, 'seconds')}
                {label?.seconds?.[id] && ', from the label'}
              </span>
            </dt>
            <dd class={over ? 'soft' : ''}>{over ? 'over' : clockTime(until, now)}</dd>
          </>
        ))}
      </dl>
      <p class="soft small">
        {findAdhesive(adhesive)?.name ?? adhesive} at <Amount of={{ value: celsius, unit: 'celsius' }} />.
      </p>
    </section>
  );
}
