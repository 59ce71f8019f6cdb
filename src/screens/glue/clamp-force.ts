import { likely } from '../../core/answer/range.ts';
import type { OwnedClamps } from '../../core/gluing/clamps-owned.ts';
import type { Clamps } from '../../store/records/shop.ts';
import { type ClampKind, clampKinds } from '../../tables/clamps.ts';

/** A kind that the table doesn't know counts as the first that begins alike: a plain `bar` is a heavy bar clamp. */
const kindOf = (id: string): ClampKind =>
  clampKinds.find((kind) => kind.id.startsWith(id)) ?? (clampKinds[0] as ClampKind);

/** The drawer of clamps with what a hand gives with each kind. Straps go round a case, not across a panel. */
export const ownedClamps = (clamps: readonly Clamps[]): OwnedClamps[] =>
  clamps.flatMap(({ kind, count, opening: reach }) => {
    const { id, name, newtons } = kindOf(kind);
    return id === 'strap' || id === 'spring' ? [] : [{ name, count, force: likely(newtons), reach }];
  });

export const hasStraps = (clamps: readonly Clamps[]): boolean => clamps.some(({ kind }) => kind === 'strap');

/** Newtons of the clamp that a panel this wide, mm, is closed with: the strongest owned that reaches; a bar clamp when none does. */
export function clampForceFor(owned: readonly OwnedClamps[], across: number | undefined): number {
  const reaching = owned.filter(({ reach, count }) => count > 0 && reach >= (across ?? 0));
  return Math.max(...reaching.map(({ force }) => force), reaching.length === 0 ? likely(kindOf('bar').newtons) : 0);
}
