import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mitreClamping } from '../../core/gluing/mitre-clamping.ts';
import { Reason } from '../../ui/reason.tsx';
import { SayList } from '../../ui/say-list.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { ClampDrawing } from './clamp-drawing.tsx';
import { hasStraps } from './clamp-force.ts';
import type { ClampPlan } from './plan-glue-up.ts';
import type { ReadGlue } from './read-glue-form.ts';
import type { FormProps } from './setup-form.tsx';

/** How many clamps, where they go, and what is short on the rack. */
export function ClampAnswer({ read, plan: { clamps } }: FormProps) {
  if (read.meets === 'mitre-case' || read.meets === 'mitre-frame') return <Mitres of={read} />;
  if (!clamps) return <p class="soft">Pick the wood to see how many.</p>;
  if (isProblem(clamps)) return <Reason of={clamps} />;
  const { pressure, needed, owned } = clamps;
  const length = Math.max(...read.seams.map((seam) => seam.length));
  return (
    <>
      <p>{read.meets === 'edge' ? 'Above and below by turns.' : 'For the longest joint.'}</p>
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
      <SayList of={helps} look="rows" />
    </div>
  );
}

/** Mitres want pressing across the joint itself, or they slide open. */
function Mitres({ of: { meets, seams } }: { of: ReadGlue }) {
  const advice = mitreClamping({
    kind: meets === 'mitre-case' ? 'case' : 'frame',
    width: Math.max(0, ...seams.map((seam) => seam.length)),
    hasStraps: hasStraps(shop.value.clamps),
  });
  return isProblem(advice) ? null : <SayList of={advice} look="rows" />;
}
