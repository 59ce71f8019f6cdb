import { isProblem, type Outcome } from '../../../src/core/answer/problem.ts';
import { sayPhrase } from '../../../src/core/answer/say-phrase.ts';
import type { Adhesive } from '../../../src/core/gluing/adhesive.ts';
import { adhesiveById } from '../../../src/tables/adhesives.ts';

/** The value of an outcome that must not be a problem. */
export function solved<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(`${outcome.field}: ${said(outcome)}`);
  return outcome;
}

/** What a problem says, in millimetres. */
export function said(outcome: unknown): string {
  return isProblem(outcome) ? sayPhrase(outcome.message, { unit: 'mm', nearest: 16 }) : '';
}

export function kind(id: string): Adhesive {
  const found = adhesiveById(id);
  if (!found) throw new Error(`no adhesive ${id}`);
  return found;
}
