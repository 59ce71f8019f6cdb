import type { SquareHabits } from '../../store/records/shop.ts';
import { usualSpringBack } from '../../tables/reading-precisions.ts';
import { squarenessTolerances } from '../../tables/squareness-tolerances.ts';

/** Slide allowed for a use, mm for each metre of end: the maker's own, or common practice. */
export const allowedFor = (use: string, { allowed }: SquareHabits = {}): number =>
  allowed?.[use] ?? (squarenessTolerances.find(({ id }) => id === use) ?? squarenessTolerances[0])?.perMetre ?? 1;

/** Part of a clamp's pull that a case gives back. */
export const springBackOf = ({ springBack = usualSpringBack.share }: SquareHabits = {}): number => springBack;
