import type { Kind } from '../../store/records/kinds.ts';
import type { StoredRecord } from '../../store/records/record.ts';

const kindNames: Readonly<Record<Kind, string>> = {
  shop: 'The shop',
  delivery: 'Delivery',
  board: 'Board',
  piece: 'Piece',
  plan: 'Breakdown plan',
  milling: 'Milling run',
  square: 'Square check',
  glueup: 'Glue-up',
  finish: 'Finish schedule',
  timer: 'Timer',
};

export const kindName = (kind: string): string =>
  Object.hasOwn(kindNames, kind) ? kindNames[kind as Kind] : `“${kind.slice(0, 40)}”`;

/** What the maker calls a record: its kind, and what it goes by. */
export function recordName(kind: string, record: StoredRecord | undefined): string {
  const { chalk, name, supplier, date, use } = (record ?? {}) as { readonly [property: string]: unknown };
  const own = [chalk, name, supplier, date, use].filter((word) => typeof word === 'string').join(', ');
  return own === '' ? kindName(kind) : `${kindName(kind)} ${own}`;
}
