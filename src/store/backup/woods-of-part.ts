import type { Contents } from '../contents.ts';
import { defaultShop, type OwnWood, type Shop, shopId } from '../records/shop.ts';
import { freshShop } from '../shop.ts';
import { shopOf } from './join-shops.ts';

/** The woods of the shop's own that these contents hold figures of. */
export const ownWoodsIn = (contents: Pick<Contents, 'kinds'>): readonly OwnWood[] => shopOf(contents)?.woods ?? [];

/** What goes along of a shop with a part of it: the figures of the woods of its own that the part uses, and nothing else. */
export function withWoodsUsed(part: Contents['kinds'], all: Pick<Contents, 'kinds'>): Contents['kinds'] {
  const { piece = [], board = [] } = part;
  const pieces = piece as unknown as readonly { readonly parts: readonly { readonly species: string }[] }[];
  const boards = board as unknown as readonly { readonly species: string }[];
  const used = new Set([...boards, ...pieces.flatMap(({ parts }) => parts)].map(({ species }) => species));
  const woods = ownWoodsIn(all).filter(({ name }) => used.has(name));
  return woods.length === 0 ? part : { ...part, shop: [{ ...defaultShop(0), revision: 1, woods } as Shop] };
}

/** A part of another shop as it comes into this one: its woods join those here; one that is known here by its name stays. */
export function partInto(mine: Contents, part: Contents, now: number): Contents {
  const { shop: _, ...kinds } = part.kinds;
  // What has come in doesn't go with the demo.
  const { demo: _demo, ...shop } = shopOf(mine) ?? freshShop();
  const { woods = [] } = shop;
  const added = ownWoodsIn(part).filter(({ name }) => !woods.some((wood) => wood.name === name));
  if (added.length === 0) return { ...part, kinds };
  const removed = mine.removed.find(({ id }) => id === shopId)?.revision ?? 0;
  const revision = Math.max(shop.revision, removed) + 1;
  return {
    ...part,
    kinds: { ...kinds, shop: [{ ...shop, woods: [...woods, ...added], revision, updated: now } as Shop] },
  };
}
