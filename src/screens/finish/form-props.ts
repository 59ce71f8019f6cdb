import type { Problem } from '../../core/answer/problem.ts';
import type { FinishForm } from './finish-form.ts';
import type { ReadFinish } from './read-finish-form.ts';

/** What each part of the planning screen gets: the form as typed, as read, what is wrong where, and how to change it. */
export interface FormProps {
  readonly form: FinishForm;
  readonly read: ReadFinish;
  /** What is wrong with an entry. */
  at(entry: string): Problem | undefined;
  change(part: Partial<FinishForm>): void;
}
