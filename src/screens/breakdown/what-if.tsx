import { useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { checked } from '../../core/answer/checked.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import { planTotals } from '../../core/breakdown/plan-totals.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { Pick } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { units } from '../../ui/units.ts';
import { Compared } from './compared.tsx';
import type { Names } from './names.ts';
import { usePlanner } from './use-planner.ts';
import { whatIfs } from './what-ifs.ts';

interface Props {
  asked: BreakdownProblem;
  plan: Plan;
  names: Names;
}

/** What a change would save or cost; the plan in hand stays as it is. */
export function WhatIfCard({ asked, plan, names }: Props) {
  const draft = useDraft(`what-if-2-${plan.pieceId}-${units.value.unit}`, { what: '', value: '' });
  const planner = usePlanner(names);
  const [bad, setBad] = useState<Problem>();
  const [answer, setAnswer] = useState<{ asked: BreakdownProblem; plan: BreakdownPlan }>();
  const form = draft.value;
  if (!form) return null;
  const choices = whatIfs(asked, names);
  const chosen = choices.find(({ value }) => value === form.what) ?? choices[0];
  const edit = (change: Partial<typeof form>) => {
    draft.set({ ...form, ...change });
    setAnswer(undefined);
    setBad(undefined);
  };
  const find = () => {
    const size = checked(parseLength(form.value, units.value.unit), (mm) =>
      badNumber('', 'The new size', mm, 'mm', { above: 0, most: 12_200 }),
    );
    if (isProblem(size)) return setBad(size);
    // The pad would stand before the answer.
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    const other = chosen.asked(size);
    planner.plan(other, (found) => setAnswer({ asked: other, plan: found }), { startFrom: plan });
  };
  return (
    <Card title="What if">
      <Pick label="What changes" value={chosen.value} options={choices} onInput={(what) => edit({ what })} />
      <LengthField
        label="It would be"
        value={form.value}
        problem={bad}
        onInput={(value) => edit({ value })}
        done={{ label: 'Answer', run: find }}
      />
      <p class="soft small">
        Now <Length mm={chosen.now} />.
      </p>
      <Button disabled={planner.done !== undefined} onClick={find}>
        Answer
      </Button>
      <div aria-live="polite">
        <Trouble of={planner.trouble} />
        {answer && (
          <Compared label="Then" totals={planTotals(answer.asked, answer.plan)} now={planTotals(asked, plan)} />
        )}
      </div>
    </Card>
  );
}
