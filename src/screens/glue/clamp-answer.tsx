import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { mitreClamping } from '../../core/gluing/mitre-clamping.ts';
import { Amount } from '../../ui/amount.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { ClampDrawing } from './clamp-drawing.tsx';
import { hasStraps } from './clamp-force.ts';
import type { GlueForm } from './glue-form.ts';
import type { ClampPlan, GluePlan } from './plan-glue-up.ts';
import type { ReadGlue } from './read-glue-form.ts';

interface Props {
  form: GlueForm;
  read: ReadGlue;
  plan: GluePlan;
}

/** How many clamps, where they go, and what is short on the rack. */
export function ClampAnswer({ form, read, plan: { clamps } }: Props) {
  if (form.meets === 'mitre-case' || form.meets === 'mitre-frame') return <Mitres form={form} read={read} />;
  if (!clamps) return read.seams.length > 0 ? <p class="soft">Pick the wood to see how many clamps it takes.</p> : null;
  if (isProblem(clamps)) return null;
  const { pressure, needed, owned } = clamps;
  const { clamps: number, spacing, by } = needed.value;
  const length = Math.max(...read.seams.map((seam) => seam.length));
  return (
    <>
      <p>
        {form.meets === 'edge' ? 'Across the panel' : 'Along the longest joint'}: {number}{' '}
        {number === 1 ? 'clamp' : 'clamps'}, every <Amount of={mm(spacing)} />, above and below by turns.{' '}
        {by === 'spread' ? 'What decides is how far the pressure spreads.' : 'What decides is the force.'}
      </p>
      <ClampDrawing length={length} clamps={number} across={read.across} />
      <Owned of={owned} />
      <ShowWorking label="How the clamps are worked out" of={needed.working} />
      <ShowWorking label="How the pressure is worked out" of={pressure.working} />
    </>
  );
}

function Owned({ of: { take, missing, missingForce, helps } }: { of: ClampPlan['owned'] }) {
  const taken = take.map(({ name, count }) => `${count} × ${name}`).join(', ');
  const short = missing + missingForce > 0;
  return (
    <div class={short ? 'answer now' : 'answer'}>
      <p>
        <b>{short ? 'Short of clamps.' : 'You have enough clamps.'}</b>{' '}
        {taken ? `Take ${taken}.` : 'None reaches across.'}
      </p>
      {helps.length > 0 && (
        <ul class="rows">
          {helps.map((help) => (
            <li>
              <span>
                <Say phrase={help} />
              </span>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** Mitres want pressing across the joint itself, or they slide open. */
function Mitres({ form, read }: Pick<Props, 'form' | 'read'>) {
  const width = Math.max(0, ...read.seams.map((seam) => seam.length));
  if (width === 0) return null;
  const advice = mitreClamping({
    kind: form.meets === 'mitre-case' ? 'case' : 'frame',
    width,
    hasStraps: hasStraps(shop.value.clamps),
  });
  if (isProblem(advice)) return null;
  return (
    <ol class="rows">
      {advice.todo.map((todo) => (
        <li>
          <span>
            <Say phrase={todo} />
          </span>
        </li>
      ))}
    </ol>
  );
}
