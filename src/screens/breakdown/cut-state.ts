import type { Plan, PlanBlank } from '../../store/records/plan.ts';
import { solvedProblem } from './solved-problem.ts';

type Planned = Pick<Plan, 'blanks' | 'problem' | 'cutDone'>;

/** How many of a blank's first strips were cut under the plan before this one. */
export const cutBefore = (plan: Planned, blank: PlanBlank): number =>
  solvedProblem(plan).cut?.find(({ board, start }) => board === blank.board && start === blank.start)?.strips.length ??
  0;

/** How many of a blank's first strips are cut: all once its board is ticked. */
export const cutStrips = (plan: Planned, blank: PlanBlank): number =>
  plan.cutDone?.includes(blank.board) ? blank.strips.length : cutBefore(plan, blank);

export const isCut = (plan: Planned, boardId: string): boolean => {
  const blanks = plan.blanks.filter(({ board }) => board === boardId);
  return blanks.length > 0 && blanks.every((blank) => cutStrips(plan, blank) === blank.strips.length);
};

/** The plan with one strip marked spoilt, or good again. */
export function withSpoilt(plan: Plan, blankAt: number, stripAt: number, spoilt: boolean): Plan {
  const blanks = plan.blanks.map((blank, at) =>
    at !== blankAt
      ? blank
      : {
          ...blank,
          strips: blank.strips.map(({ spoilt: before, ...strip }, n) =>
            (n === stripAt ? spoilt : before) ? { ...strip, spoilt: true } : strip,
          ),
        },
  );
  return { ...plan, blanks };
}

/** What is spoilt since the plan was made, so that it no longer holds. */
export const newlySpoilt = (plan: Plan): number => {
  const known = solvedProblem(plan).cut ?? [];
  return plan.blanks
    .flatMap((blank) => {
      const before = known.find(({ board, start }) => board === blank.board && start === blank.start);
      return blank.strips.map((strip, at) => strip.spoilt === true && before?.strips[at]?.spoilt !== true);
    })
    .filter(Boolean).length;
};

/** The plan as far as it gives parts: spoilt strips belong to none. */
export const goodStrips = (plan: Plan): Plan => ({
  ...plan,
  blanks: plan.blanks.map((blank) => ({
    ...blank,
    strips: blank.strips.map((strip) => (strip.spoilt ? { ...strip, part: '', unit: 0 } : strip)),
  })),
});
