import type { Kind, Kinds } from '../../src/store/records/kinds.ts';
import { write } from '../../src/store/write.ts';

/** Stores records as given, over whatever is there. */
export const putMany = <K extends Kind>(kind: K, records: readonly Kinds[K][]) =>
  write(records.map((put) => ({ kind, put }))) as Promise<Kinds[K][]>;

export const put = async <K extends Kind>(kind: K, record: Kinds[K]) => (await putMany(kind, [record]))[0] as Kinds[K];
