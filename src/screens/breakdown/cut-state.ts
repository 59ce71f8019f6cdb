import { cutBefore as blankBefore } from '../../core/breakdown/board-cuts.ts';
import type { CutBlank } from '../../core/breakdown/problem-types.ts';
import type { Plan, PlanBlank } from '../../store/records/plan.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { solvedProblem } from './solved-problem.ts';

type Planned = Pick<Plan, 'blanks' | 'problem' | 'cutDone'>;

/** A blank as it was cut under the plan before this one, if it was. */
export const cutBefore = (plan: Planned, blank: PlanBlank): CutBlank | undefined =>
  blankBefore(solvedProblem(plan), blank);

/** How many of a blank's first strips are cut: all once its board is ticked. */
export const cutStrips = (plan: Planned, blank: PlanBlank): number =>
  plan.cutDone?.includes(blank.board) ? blank.strips.length : (cutBefore(plan, blank)?.strips.length ?? 0);

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
          strips: blank.strips.map((strip, n) =>
            n === stripAt ? withOptional(strip, 'spoilt', spoilt || undefined) : strip,
          ),
        },
  );
  return { ...plan, blanks };
}

/** How many strips are spoilt since the plan was made, so that it no longer holds. */
export const newlySpoilt = (plan: Plan): number =>
  plan.blanks.flatMap((blank) =>
    blank.strips.filter(({ spoilt }, at) => spoilt && !cutBefore(plan, blank)?.strips[at]?.spoilt),
  ).length;
