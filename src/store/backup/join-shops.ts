import type { Contents } from '../contents.ts';
import { type Shop, shopId } from '../records/shop.ts';

/** What a shop gathers, and by what one entry is known: where two whole shops meet, neither loses any. */
const gathered = { woods: 'name', references: 'tool', air: 'at' } as const;

export const shopOf = ({ kinds }: Pick<Contents, 'kinds'>) => kinds.shop?.[0] as Shop | undefined;

/**
 * Two whole shops before they are merged record by record, of which only one shop record stays: what either has gathered
 * then stands in both. Of an entry that both know the later one stands, or else each keeps its own.
 */
export const joinShops = (mine: Contents, theirs: Contents): [mine: Contents, theirs: Contents] => [
  joined(mine, theirs),
  joined(theirs, mine),
];

function joined(contents: Contents, other: Contents): Contents {
  const [own, another] = [shopOf(contents), shopOf(other)];
  if (!another || another.demo) return contents;
  // A shop goes with the demo alone: that takes no other shop with it.
  if (!own) return { ...contents, removed: contents.removed.filter(({ id }) => id !== shopId) };
  const lists = Object.entries(gathered).flatMap(([list, key]) => {
    const entries = [another, own].flatMap((shop) => (shop as unknown as Lists)[list] ?? []);
    const known = new Map(entries.sort((a, b) => (a.at ?? 0) - (b.at ?? 0)).map((entry) => [entry[key], entry]));
    return known.size > 0 ? [[list, [...known.keys()].sort().map((one) => known.get(one))]] : [];
  });
  return { ...contents, kinds: { ...contents.kinds, shop: [{ ...own, ...Object.fromEntries(lists) }] } };
}

type Lists = Readonly<
  Record<string, readonly { readonly name?: string; readonly tool?: string; readonly at?: number }[]>
>;
