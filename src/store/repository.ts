import { Stale } from './commit.ts';
import { inTurn } from './in-turn.ts';
import type { Indexes, Kind, Kinds } from './records/kinds.ts';
import type { Fields } from './records/record.ts';
import { remove, type Undo } from './remove.ts';
import { transact } from './transact.ts';
import { write } from './write.ts';

/** Reads and writes one kind of record. A write has happened when its promise resolves; it rejects with `WriteFailed`. */
export interface Repository<K extends Kind> {
  readonly kind: K;
  all(): Promise<Kinds[K][]>;
  count(): Promise<number>;
  get(id: string): Promise<Kinds[K] | undefined>;
  /** Records whose `index` is this value, or lies in this range. */
  where<I extends keyof Indexes[K] & string>(index: I, value: Indexes[K][I] | IDBKeyRange): Promise<Kinds[K][]>;
  add(fields: Fields<Kinds[K]>): Promise<Kinds[K]>;
  addMany(fields: readonly Fields<Kinds[K]>[]): Promise<Kinds[K][]>;
  /** Stores the record as given, over whatever is there. Gives it back as stored: with its new revision. */
  put(record: Kinds[K]): Promise<Kinds[K]>;
  putMany(records: readonly Kinds[K][]): Promise<Kinds[K][]>;
  /** Edits the record as it is stored now, so that two tabs don't undo each other. Undefined when it is gone. */
  change(id: string, edit: (record: Kinds[K]) => Kinds[K]): Promise<Kinds[K] | undefined>;
  /** As `change`, where nobody waits for it: a write that fails is kept and shown by the shell. */
  edit(id: string, edit: (record: Kinds[K]) => Kinds[K]): void;
  remove(id: string): Promise<Undo>;
}

export function repository<K extends Kind>(kind: K): Repository<K> {
  type R = Kinds[K];

  const get = (id: string) =>
    transact([kind], 'readonly', (transaction) => transaction.objectStore(kind).get(id) as Promise<R | undefined>);

  const putMany = (records: readonly R[], now = Date.now()) =>
    write(
      records.map((put) => ({ kind, put })),
      now,
    ) as Promise<R[]>;
  const put = async (record: R) => (await putMany([record]))[0] as R;

  const addMany = (fields: readonly Fields<R>[]) => {
    const now = Date.now();
    return putMany(
      fields.map(
        (given) => ({ ...given, id: crypto.randomUUID(), created: now, updated: now, revision: 0 }) as unknown as R,
      ),
      now,
    );
  };

  async function editStored(id: string, edit: (record: R) => R): Promise<R | undefined> {
    for (;;) {
      const before = await get(id);
      if (!before) return undefined;
      try {
        const [after] = await write([{ kind, put: edit(before), onto: before.revision }]);
        return after as R;
      } catch (error) {
        if (!(error instanceof Stale)) throw error;
      }
    }
  }

  // One after the other, so that the last edit of this tab is the one that stays; another tab's is met by trying again.
  const change = (id: string, edit: (record: R) => R) => inTurn(`${kind}/${id}`, () => editStored(id, edit));

  return {
    kind,
    get,
    put,
    putMany: (records) => putMany(records),
    addMany,
    all: () => transact([kind], 'readonly', (transaction) => transaction.objectStore(kind).getAll() as Promise<R[]>),
    count: () => transact([kind], 'readonly', (transaction) => transaction.objectStore(kind).count()),
    where: (index, value) =>
      transact(
        [kind],
        'readonly',
        (transaction) =>
          transaction
            .objectStore(kind)
            .index(index)
            .getAll(value as IDBValidKey | IDBKeyRange) as Promise<R[]>,
      ),
    add: async (fields) => (await addMany([fields]))[0] as R,
    change,
    edit: (id, edit) => void change(id, edit).catch(() => {}),
    remove: (id) => remove([{ kind, id }]),
  };
}
