import type { CheapestCover } from './cheapest-cover.ts';
import { coverPanel } from './cover-panel.ts';
import type { Draft } from './draft.ts';
import type { Mood } from './mood.ts';
import { placeSolid } from './place-solid.ts';
import type { Unit } from './rack.ts';

/** Puts units back into a draft, long ones first more or less; what finds no place stays missing. */
export function rebuild(
  draft: Draft,
  pending: readonly number[],
  shuffle: number,
  mood: Mood,
  cover: CheapestCover,
): void {
  const units = draft.rack.units;
  const keys = new Map<number, number>();
  const key = (unit: Unit): number => {
    const known = keys.get(unit.partAt);
    if (known !== undefined) return known;
    const made = unit.blankLength * (1 + shuffle * mood.random());
    keys.set(unit.partAt, made);
    return made;
  };
  const order = pending.map((at) => ({ at, key: key(units[at] as Unit) })).sort((a, b) => b.key - a.key || a.at - b.at);
  for (const { at } of order) {
    const unit = units[at] as Unit;
    mood.waiting.placed(unit);
    if (unit.part.panel) coverPanel(draft, at, mood, cover);
    else placeSolid(draft, at, mood);
  }
}
