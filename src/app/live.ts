import { useEffect, useState } from 'preact/hooks';
import { onChange } from '../store/changes.ts';
import type { Kind, Kinds } from '../store/records/kinds.ts';
import type { Repository } from '../store/repository.ts';

/**
 * What `read` gives, read again after every write to one of these kinds, in this tab or another. Undefined until it is
 * there; when the database can't be read, the shell says why. A change of `key` reads anew.
 */
export function useLive<T>(kinds: readonly Kind[], read: () => Promise<T>, key = ''): T | undefined {
  const [value, setValue] = useState<T>();
  useEffect(() => {
    let latest = 0;
    const readAgain = () => {
      const mine = ++latest;
      read().then(
        (next) => mine === latest && setValue(() => next),
        () => {},
      );
    };
    readAgain();
    const stop = onChange(kinds, readAgain);
    return () => {
      latest = -1;
      stop();
    };
  }, [key]);
  return value;
}

/** All records of one kind. */
export function useAll<K extends Kind>(records: Repository<K>): Kinds[K][] | undefined {
  return useLive([records.kind], () => records.all());
}

/** One record; `null` when there is none with this id. */
export function useOne<K extends Kind>(records: Repository<K>, id: string): Kinds[K] | null | undefined {
  return useLive<Kinds[K] | null>([records.kind], async () => (await records.get(id)) ?? null, id);
}
