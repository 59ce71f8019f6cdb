import { newest } from './newest.ts';
import type { Plan } from './plan.ts';

/** The plan that counts for a piece: the chosen one, or else the newest. Two phones may each have chosen one. */
export const planInHand = (plans: readonly Plan[]): Plan | undefined =>
  newest(plans.filter(({ chosen }) => chosen)) ?? newest(plans);
