import type { Working } from '../core/answer/worked.ts';
import { sources } from '../tables/sources.ts';
import { Amount } from './amount.tsx';
import { Fold } from './fold.tsx';
import { Say } from './say.tsx';

const marks = {
  published: 'published',
  'from-memory': 'from memory, not checked',
  'common-practice': 'common practice',
  label: 'from the label',
};

/** Opens how a number came about: its steps, where the method holds, and what it rests on. */
export function ShowWorking({ of, label = 'How this is worked out' }: { of: Working; label?: string }) {
  return (
    <Fold label={label}>
      <Steps of={of} />
    </Fold>
  );
}

function Steps({ of }: { of: Working }) {
  return (
    <ol>
      {of.steps.map((step) => (
        <li>
          <div class="soft small">{step.finds}</div>
          <div>
            <Say phrase={step.by} /> ={' '}
            <b>
              <Amount of={step.gives} />
            </b>
          </div>
        </li>
      ))}
      {of.holds && (
        <li class="small">
          Holds for: <Say phrase={of.holds} />
        </li>
      )}
      {of.sources.map((id) => (
        <li class="soft small">
          {sources[id].title} ({marks[sources[id].kind]})
        </li>
      ))}
    </ol>
  );
}
