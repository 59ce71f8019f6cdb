import type { Migration } from './migration.ts';

const stores: Readonly<Record<string, readonly string[]>> = {
  shop: [],
  delivery: ['date'],
  board: ['state', 'species', 'pieceId', 'deliveryId', 'parentId'],
  piece: [],
  plan: ['pieceId'],
  milling: ['pieceId', 'planId'],
  square: ['pieceId'],
  glueup: ['pieceId'],
  finish: ['pieceId'],
  timer: ['endsAt', 'for.id'],
};

/** The first kinds of record, drafts of half-typed forms, and what is remembered of removed records. */
export const firstSchema: Migration = {
  to: 1,
  shape(database) {
    for (const [kind, indexes] of Object.entries(stores)) {
      const store = database.createObjectStore(kind, { keyPath: 'id' });
      for (const index of indexes) store.createIndex(index, index);
    }
    database.createObjectStore('removed', { keyPath: ['kind', 'id'] });
    database.createObjectStore('draft');
    database.createObjectStore('meta');
  },
};
