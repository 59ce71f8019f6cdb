import { layBlanks } from '../../core/milling/lay-blanks.ts';
import { lineage } from '../../core/milling/lineage.ts';
import type { MillingInput } from '../../core/milling/milling-input.ts';
import type { MillingStep } from '../../core/milling/milling-step.ts';
import { type Ticks, throughOf } from '../../core/steps/progress.ts';
import type { Plan } from '../../store/records/plan.ts';
import { withOptional } from '../../store/records/with-optional.ts';

type Lost = Readonly<Record<string, string>>;

/** The strips, still good, that are lost with a piece of a step: the blank's, or the strip itself; none for what is glued. */
export function stripsOf(
  input: MillingInput,
  steps: readonly MillingStep[],
  pieceId: string,
  lost: Lost = {},
): string[] {
  const was = lineage(steps);
  return layBlanks(input).flatMap(({ id: blank, strips }) =>
    strips
      .map(({ id }) => id)
      .filter((id) => !(id in lost) && (id === pieceId || blank === pieceId || was.get(id)?.has(pieceId))),
  );
}

/** The boards all of whose blanks are crosscut. */
export function boardsCut(input: MillingInput, steps: readonly MillingStep[], ticks: Ticks): string[] {
  const crosscut = steps.filter(({ stage }) => stage === 'crosscut rough');
  const cut = new Set(crosscut.flatMap((step) => [...throughOf(ticks, step)]));
  const blanks = layBlanks(input);
  const boards = new Set(blanks.map(({ board }) => board.id));
  return [...boards].filter((id) => blanks.every((blank) => blank.board.id !== id || cut.has(blank.id)));
}

/**
 * The plan as far as the run has come: which boards are cut, and which strips came to nothing, so that the rest can be
 * planned again. Those that were lost before and aren't now are good again.
 */
export function planAfter(
  plan: Plan,
  input: MillingInput,
  steps: readonly MillingStep[],
  ticks: Ticks,
  lost: Lost,
  lostBefore: Lost = {},
): Plan {
  const laid = layBlanks(input).flatMap(({ board, start, length, strips }) =>
    strips.map(({ id }) => ({ id, board: board.id, start, end: start + length, at: Number(id.split('/').at(-1)) - 1 })),
  );
  const blanks = plan.blanks.map((blank) => ({
    ...blank,
    strips: blank.strips.map((strip, place) => {
      const own = laid.filter(
        ({ board, start, end, at }) =>
          board === blank.board && at === place && blank.start >= start - 0.01 && blank.start < end,
      );
      if (own.some(({ id }) => id in lost)) return { ...strip, spoilt: true };
      return own.some(({ id }) => id in lostBefore) ? withOptional(strip, 'spoilt', undefined) : strip;
    }),
  }));
  const own = new Set(input.blanks.map(({ board }) => board));
  const cutDone = [...(plan.cutDone ?? []).filter((id) => !own.has(id)), ...boardsCut(input, steps, ticks)];
  return { ...plan, blanks, cutDone };
}
