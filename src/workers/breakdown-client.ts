import type { PlanOptions } from '../core/breakdown/plan-breakdown.ts';
import type { BreakdownProblem } from '../core/breakdown/problem-types.ts';
import type { BreakdownNews, BreakdownOrder } from './breakdown.worker.ts';

/**
 * Plans a breakdown off the main thread. `onNews` hears of better plans until one is finished, or of a problem.
 *
 * @returns `stop` finishes early with the best plan so far; `drop` ends at once and tells nothing more
 */
export function startBreakdown(
  problem: BreakdownProblem,
  onNews: (news: BreakdownNews) => void,
  onFailure: (message: string) => void,
  options: PlanOptions = {},
): { stop: () => void; drop: () => void } {
  const worker = new Worker(new URL('./breakdown.worker.ts', import.meta.url), { type: 'module' });
  const order = (message: BreakdownOrder) => worker.postMessage(message);
  worker.onmessage = ({ data }: MessageEvent<BreakdownNews>) => {
    if (data.kind === 'problem' || data.finished) worker.terminate();
    onNews(data);
  };
  worker.onerror = ({ message }) => {
    worker.terminate();
    onFailure(message);
  };
  order({ kind: 'plan', problem, options });
  return { stop: () => order({ kind: 'stop' }), drop: () => worker.terminate() };
}
