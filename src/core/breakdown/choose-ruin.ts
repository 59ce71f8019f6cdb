import type { Draft } from './draft.ts';
import type { Unit } from './rack.ts';
import { pick, type Random } from './random.ts';

/** Which units to take out together before the draft is rebuilt: those that share boards, or length, or just some. */
export function chooseRuin(draft: Draft, random: Random): Uint8Array {
  const { units } = draft.rack;
  const gone = new Uint8Array(units.length);
  for (const [at, lacks] of draft.missing.entries()) if (lacks > 0) gone[at] = 1;
  const kind = random();
  if (kind < 0.5) sharingBoards(draft, random, gone);
  else if (kind < 0.8) likeLengths(draft, random, gone);
  else for (let turn = 1 + pick(random, 4); turn > 0; turn--) gone[pick(random, units.length)] = 1;
  return gone;
}

function sharingBoards(draft: Draft, random: Random, gone: Uint8Array): void {
  if (draft.blanks.length === 0) return;
  const runs = new Set<number>();
  for (let turn = 1 + pick(random, 3); turn > 0; turn--)
    runs.add(draft.blanks[pick(random, draft.blanks.length)]?.runAt ?? -1);
  for (const { runAt, strips } of draft.blanks) if (runs.has(runAt)) for (const { unit } of strips) gone[unit] = 1;
}

function likeLengths(draft: Draft, random: Random, gone: Uint8Array): void {
  const { units } = draft.rack;
  const middle = (units[pick(random, units.length)] as Unit).blankLength;
  const spread = 1 + 0.3 * random();
  const share = 0.3 + 0.7 * random();
  for (const [at, { blankLength }] of units.entries())
    if (blankLength < middle * spread && blankLength * spread > middle && random() < share) gone[at] = 1;
}
