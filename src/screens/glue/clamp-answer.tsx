import { shop } from '../../app/shop.ts';
import type { Phrase } from '../../core/answer/phrase.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mitreClamping } from '../../core/gluing/mitre-clamping.ts';
import { Reason } from '../../ui/reason.tsx';
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
  if (!clamps) return <p class="soft">Pick the wood to see how many.</p>;
  if (isProblem(clamps)) return <Reason of={clamps} />;
  const { pressure, needed, owned } = clamps;
  const length = Math.max(...read.seams.map((seam) => seam.length));
  return (
    <>
      <p>
        {form.meets === 'edge' ? 'Across the panel' : 'Along the longest joint'}, above and below by turns. The{' '}
        {needed.value.by === 'spread' ? 'spread of pressure' : 'force'} decides.
      </p>
      <ClampDrawing length={length} clamps={needed.value.clamps} across={read.across} />
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
      <Phrases of={helps} />
    </div>
  );
}

/** Mitres want pressing across the joint itself, or they slide open. */
function Mitres({ form, read }: Pick<Props, 'form' | 'read'>) {
  const advice = mitreClamping({
    kind: form.meets === 'mitre-case' ? 'case' : 'frame',
    width: Math.max(0, ...read.seams.map((seam) => seam.length)),
    hasStraps: hasStraps(shop.value.clamps),
  });
  return isProblem(advice) ? null : <Phrases of={advice.todo} />;
}

const Phrases = ({ of: phrases }: { of: readonly Phrase[] }) => (
  <ol class="rows">
    {phrases.map((phrase) => (
      <li>
        <span>
          <Say phrase={phrase} />
        </span>
      </li>
    ))}
  </ol>
);
