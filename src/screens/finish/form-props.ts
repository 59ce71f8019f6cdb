import type { Problem } from '../../core/answer/problem.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { FinishForm } from './finish-form.ts';
import type { FinishPlan } from './plan-finish.ts';
import type { ReadFinish } from './read-finish-form.ts';

/** The entries for one text each. */
export type Entry =
  | 'rate'
  | 'wait'
  | 'wipeOff'
  | 'use'
  | 'cure'
  | 'solids'
  | 'film'
  | 'celsius'
  | 'humidity'
  | 'sections'
  | 'onShelf'
  | 'coats'
  | 'insideCoats';

/** What each part of the planning screen gets: the form as typed, as read, what is wrong where, and how to change it. */
export interface FormProps {
  readonly form: FinishForm;
  readonly read: ReadFinish;
  /** Undefined until there is one. */
  readonly plan: FinishPlan | undefined;
  readonly piece: Piece;
  readonly all: readonly Piece[];
  /** What is wrong with an entry. */
  at(entry: string): Problem | undefined;
  /** What a field for one entry needs; `text` where an entry not touched yet shows something. */
  field(
    entry: Entry,
    text?: string,
  ): { readonly value: string; readonly problem: Problem | undefined; onInput(text: string): void };
  change(part: Partial<FinishForm>): void;
}
