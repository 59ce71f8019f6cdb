import { useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import { planTotals } from '../../core/breakdown/plan-totals.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import { parseLength } from '../../core/length/parse-length.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { Choice, optionsOf, Pick } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { units } from '../../ui/units.ts';
import { Compared } from './compared.tsx';
import type { Names } from './names.ts';
import { usePlanner } from './use-planner.ts';
import { presentValue, type WhatIf, whatIfProblem } from './what-if-problem.ts';

interface Props {
  asked: BreakdownProblem;
  plan: Plan;
  names: Names;
}

interface Form {
  readonly what: WhatIf;
  readonly part: string;
  readonly value: string;
}

const questions = optionsOf<WhatIf>({ jointer: 'Jointer', thickness: 'Thickness', width: 'Width' });

/** What a change would save or cost; the plan in hand stays as it is. */
export function WhatIfCard({ asked, plan, names }: Props) {
  const draft = useDraft<Form>(`what-if-1-${plan.pieceId}`, { what: 'jointer', part: '', value: '' });
  const planner = usePlanner(names);
  const [bad, setBad] = useState<Problem>();
  const [answer, setAnswer] = useState<{ asked: BreakdownProblem; plan: BreakdownPlan }>();
  const form = draft.value;
  if (!form) return null;
  const { what } = form;
  const part = asked.parts.some(({ id }) => id === form.part) ? form.part : (asked.parts[0]?.id ?? '');
  const present = presentValue(asked, what, part);
  const edit = (change: Partial<Form>) => {
    draft.set({ ...form, ...change });
    setAnswer(undefined);
    setBad(undefined);
  };
  const find = () => {
    const value = parseLength(form.value, units.value.unit);
    const wrong = isProblem(value) ? value : badNumber('', 'The new size', value, 'mm', { above: 0, most: 12_200 });
    setBad(wrong);
    if (isProblem(value) || wrong) return;
    // The pad would stand before the answer.
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    const other = whatIfProblem(asked, what, part, value);
    planner.plan(other, (found) => setAnswer({ asked: other, plan: found }), { startFrom: plan });
  };
  return (
    <Card title="What if">
      <Choice<WhatIf> label="What changes" value={what} options={questions} onInput={(next) => edit({ what: next })} />
      {what !== 'jointer' && (
        <Pick
          label="Of the part"
          value={part}
          options={asked.parts.map(({ id }) => ({ value: id, label: names.of(id) }))}
          onInput={(next) => edit({ part: next })}
        />
      )}
      <LengthField
        label={what === 'jointer' ? 'It takes boards as wide as' : 'It would be'}
        value={form.value}
        problem={bad}
        onInput={(value) => edit({ value })}
        done={{ label: 'Answer', run: find }}
      />
      {present !== undefined && (
        <p class="soft small">
          Now <Length mm={present} />.
        </p>
      )}
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
