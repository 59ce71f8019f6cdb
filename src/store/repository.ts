import { type Reader, reader } from './reader.ts';
import { freshRecord } from './records/fresh-record.ts';
import type { Indexes, Kind, Kinds } from './records/kinds.ts';
import type { Fields } from './records/record.ts';
import { remove, type WayBack } from './remove.ts';
import { transact } from './transact.ts';
import { write, writeFrom } from './write.ts';

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
  /**
   * Edits the record as it stands now, so that two tabs don't undo each other; `fresh` stands for one that isn't stored
   * yet. Undefined when it is gone.
   */
  change(id: string, edit: (record: Kinds[K]) => Kinds[K], fresh?: () => Kinds[K]): Promise<Kinds[K] | undefined>;
  /** As `change`, for several records in one transaction. What is gone is passed over. */
  changeMany(ids: readonly string[], edit: (record: Kinds[K]) => Kinds[K]): Promise<Kinds[K][]>;
  /** As `change`, where nobody waits for it: a write that fails is kept and shown by the shell. */
  edit(id: string, edit: (record: Kinds[K]) => Kinds[K]): void;
  /** Gives the way back. */
  remove(id: string): Promise<WayBack>;
}

export function repository<K extends Kind>(kind: K): Repository<K> {
  type R = Kinds[K];

  const read = <T>(work: (stored: Reader) => Promise<T>) =>
    transact([kind], 'readonly', (transaction) => work(reader(transaction)));

  const addMany = (fields: readonly Fields<R>[]) => {
    const now = Date.now();
    return write(
      fields.map((given) => ({ kind, put: freshRecord<R>(given, now) })),
      now,
    ) as Promise<R[]>;
  };

  const changeMany = (ids: readonly string[], edit: (record: R) => R, fresh?: () => R) =>
    writeFrom([kind], async (stored) => {
      const found = await Promise.all(ids.map(async (id) => (await stored.get(kind, id)) ?? fresh?.()));
      return found.flatMap((record) => (record ? { kind, put: edit(record) } : []));
    }) as Promise<R[]>;

  const change = async (id: string, edit: (record: R) => R, fresh?: () => R) =>
    (await changeMany([id], edit, fresh))[0];

  return {
    kind,
    get: (id) => read((stored) => stored.get(kind, id)),
    addMany,
    all: () => read((stored) => stored.all(kind)),
    count: () => transact([kind], 'readonly', (transaction) => transaction.objectStore(kind).count()),
    where: (index, value) => read((stored) => stored.where(kind, index, value)),
    add: async (fields) => (await addMany([fields]))[0] as R,
    change,
    changeMany: (ids, edit) => changeMany(ids, edit),
    edit: (id, edit) => void change(id, edit).catch(() => {}),
    remove: (id) => remove([{ kind, id }]),
  };
}
