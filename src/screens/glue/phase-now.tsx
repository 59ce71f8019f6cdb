import { seconds } from '../../core/answer/quantity.ts';
import { isHurry } from '../../core/gluing/adhesive.ts';
import { type GluePhase, sunkenSeams } from '../../core/gluing/glue-up.ts';
import type { PhaseAt } from '../../core/gluing/phase-at.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { adhesiveById } from '../../tables/adhesives.ts';
import { Amount } from '../../ui/amount.tsx';
import { clockTime } from '../../ui/clock-time.ts';
import { Say } from '../../ui/say.tsx';

interface Props {
  glueup: Glueup;
  at: PhaseAt;
  now: number;
}

/** The phase that runs: what is left of it, or how long ago it ended. */
export function PhaseNow({ glueup, at: { phase, left }, now }: Props) {
  if (!phase)
    return (
      <p class="answer">
        <span class="figure words">Full strength</span>
      </p>
    );
  const overdue = left < 0;
  return (
    <div class={isHurry(phase.id) || overdue ? 'answer now' : 'answer wait'}>
      <p class="soft" aria-live="polite">
        {phase.title} · {overdue ? 'ended' : 'time left'}
      </p>
      <p class="figure countdown" role="timer">
        <Amount of={seconds(Math.abs(left))} />
        {overdue && ' ago'}
      </p>
      <p>{advice(phase, glueup, now)}</p>
    </div>
  );
}

function advice({ id, until, other }: GluePhase, { seams, clamps, adhesive }: Glueup, now: number) {
  const by = (at: number) => <b class="nowrap">{clockTime(at, now)}</b>;
  switch (id) {
    case 'open':
      return (
        <>
          {seams.length > 1 ? `All ${seams.length} seams` : 'The seam'} together by {by(until)}; past {by(other)} the
          glue has skinned over.
        </>
      );
    case 'closed':
      return (
        <>
          All {clamps} clamps tight by {by(until)}.
        </>
      );
    case 'clamp': {
      const squeezeOut = adhesiveById(adhesive)?.squeezeOut;
      return (
        <>
          Clamps off at {by(until)}; at the earliest {by(other)}.{' '}
          {squeezeOut && (
            <>
              Squeeze-out: <Say phrase={squeezeOut} />
            </>
          )}
        </>
      );
    }
    case 'rest':
      return (
        <>
          Plane, scrape or sand from {by(until)}; at the earliest {by(other)}. <Say phrase={sunkenSeams} />
        </>
      );
    case 'cure':
      return <>Load it only from {by(until)}.</>;
  }
}
