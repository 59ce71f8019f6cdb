import { useDraft } from '../../app/draft.ts';
import { usualSpringBack } from '../../tables/reading-precisions.ts';
import { squarenessTolerances } from '../../tables/squareness-tolerances.ts';

/** What this maker has set for every check: common practice until then. */
export interface Habits {
  /** Slide allowed by use, mm for each metre of end. */
  readonly allowed: Readonly<Record<string, number>>;
  /** Part of a clamp's pull that a case gives back. */
  readonly springBack: number;
}

const usual: Habits = {
  allowed: Object.fromEntries(squarenessTolerances.map(({ id, perMetre }) => [id, perMetre])),
  springBack: usualSpringBack.share,
};

/** The habits, kept on this phone as they are typed. */
export function useHabits(): readonly [Habits, (part: Partial<Habits>) => void] {
  const { value = usual, set } = useDraft('square-habits-1', usual);
  return [value, (part) => set({ ...value, ...part })];
}
