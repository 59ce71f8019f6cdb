import { shop } from '../../app/shop.ts';
import { ShowWorking } from '../../ui/show-working.tsx';
import { hasLearnt } from './glue-pace.ts';
import type { GlueWork } from './plan-glue-up.ts';

/** What the time rests on, and how to split the work where it is too little. */
export function TimeAnswer({ of: work }: { of: GlueWork }) {
  return (
    <>
      {work.spread.value.fit !== 'fits' && <Split of={work} />}
      <p class="soft small">{hasLearnt(shop.value) ? 'At the pace of your dry runs.' : 'At an unhurried pace.'}</p>
      <ShowWorking label="How the time is worked out" of={work.spread.working} />
      <ShowWorking label="How the glue’s times are worked out" of={work.times.working} />
    </>
  );
}

function Split({ of: { spread, slower } }: { of: GlueWork }) {
  const { split } = spread.value;
  return (
    <div class="answer now">
      <p>
        {split ? (
          <>
            Glue it in <b>{split.length} stages</b>, of {split.join(', ')} seams.
          </>
        ) : (
          'Splitting does not help: one seam alone, or the clamps, take too long.'
        )}
      </p>
      <p>
        {slower.length > 0
          ? `Slow enough for all at once: ${slower.map(({ name }) => name).join('; ')}.`
          : 'No glue in the list is slow enough today.'}{' '}
        A helper saves half the time.
      </p>
    </div>
  );
}
