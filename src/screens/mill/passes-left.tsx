import { useDraft } from '../../app/draft.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import type { MachineLimits } from '../../core/milling/machine-limits.ts';
import type { Machine } from '../../core/milling/milling-step.ts';
import { passesLeft } from '../../core/milling/passes-left.ts';
import { Length } from '../../ui/length.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';

interface Props {
  machine: Machine;
  /** As it is typed. */
  thickness: Outcome<number>;
  target: number;
  limits: MachineLimits;
}

/** How many passes bring what was measured to its target, at the depth that this maker likes. */
export function PassesLeft({ machine, thickness, target, limits }: Props) {
  const depth = useDraft(`pass-depth-1-${machine}-${units.value.unit}`, '');
  if (machine !== 'jointer' && machine !== 'planer' && machine !== 'router') return null;
  if (depth.value === undefined || isProblem(thickness) || thickness <= target) return null;
  const limit = limits[machine];
  const typed = depth.value.trim() === '' ? limit.depthPerPass.mm : parseLength(depth.value, units.value.unit);
  const passes = isProblem(typed) ? typed : passesLeft(thickness, target, typed, limit);
  return (
    <>
      {!isProblem(passes) && (
        <div class="answer" aria-live="polite">
          <p class="figure words">
            {passes.value.passes} {passes.value.passes === 1 ? 'pass' : 'passes'} left
          </p>
          <p>
            <Length mm={passes.value.each} /> each{depth.value.trim() === '' && ', the most this machine takes'}.
          </p>
          <ShowWorking of={passes.working} />
        </div>
      )}
      <LengthField
        label="One pass takes"
        value={depth.value}
        problem={isProblem(passes) ? passes : undefined}
        onInput={depth.set}
      />
    </>
  );
}
