import { useEffect, useRef, useState } from 'preact/hooks';
import { isProblem, type Problem, problem } from '../../core/answer/problem.ts';
import { checkProblem } from '../../core/breakdown/check-problem.ts';
import type { PlanOptions } from '../../core/breakdown/plan-breakdown.ts';
import type { BreakdownPlan, BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import { startBreakdown } from '../../workers/breakdown-client.ts';
import { inNames, type Names } from './names.ts';

export interface Planner {
  /** Share that is done while it plans. */
  readonly done: number | undefined;
  readonly trouble: Problem | undefined;
  plan(asked: BreakdownProblem, onPlan: (plan: BreakdownPlan) => void, options?: PlanOptions): void;
  /** Ends with the best plan so far. */
  stop(): void;
}

/** Plans off the main thread; what is wrong with a problem is said in the maker's names before anything starts. */
export function usePlanner(names: Names): Planner {
  const [done, setDone] = useState<number>();
  const [trouble, setTrouble] = useState<Problem>();
  const run = useRef<ReturnType<typeof startBreakdown>>(undefined);
  useEffect(() => () => run.current?.drop(), []);
  return {
    done,
    trouble,
    stop: () => run.current?.stop(),
    plan(asked, onPlan, options) {
      const checked = checkProblem(inNames(asked, names));
      setTrouble(isProblem(checked) ? checked : undefined);
      if (isProblem(checked)) return;
      run.current?.drop();
      setDone(0);
      run.current = startBreakdown(
        asked,
        (news) => {
          setDone(news.finished ? undefined : news.done);
          if (news.finished) onPlan(news.plan);
        },
        () => {
          setTrouble(problem('', 'Planning broke off. Press Plan again.'));
          setDone(undefined);
        },
        options,
      );
    },
  };
}
