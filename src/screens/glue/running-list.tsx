import { routeTo } from '../../app/routes.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { isHurry } from '../../core/gluing/adhesive.ts';
import type { PhaseAt } from '../../core/gluing/phase-at.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { Say } from '../../ui/say.tsx';
import { TimeLeft } from '../../ui/time-left.tsx';
import { phaseOf } from './glue-events.ts';

interface Running {
  readonly glueup: Glueup;
  readonly at: Outcome<PhaseAt>;
}

const dueIn = ({ at }: Running) => (isProblem(at) ? Number.NEGATIVE_INFINITY : at.left);

/** Where something is still waited for, the next due first; what can't be told is looked at before all. */
export const runningOf = (all: readonly Glueup[], now: number): Running[] =>
  all
    .map((glueup) => ({ glueup, at: phaseOf(glueup, now) }))
    .filter(({ at }) => isProblem(at) || at.phase)
    .sort((a, b) => dueIn(a) - dueIn(b));

/** Glue-ups with what is left of each, or how long ago it ended. */
export const RunningList = ({ of }: { of: readonly Running[] }) => (
  <ul class="starts">
    {of.map(({ glueup: { id, name }, at }) => {
      const phase = isProblem(at) ? undefined : at.phase;
      const calm = phase && !isHurry(phase.id) && !isProblem(at) && at.left > 0;
      return (
        <li>
          <a class={`answer ${calm ? 'wait' : 'now'} next`} href={routeTo('glue', id)}>
            <span class="soft">
              {name}
              {phase && ` · ${phase.title}`}
            </span>
            <span>{isProblem(at) ? <Say phrase={at.message} /> : <TimeLeft left={Math.round(at.left)} />}</span>
          </a>
        </li>
      );
    })}
  </ul>
);
