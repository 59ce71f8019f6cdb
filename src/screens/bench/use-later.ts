import { useEffect, useState } from 'preact/hooks';
import { whenQuiet } from '../../app/when-quiet.ts';
import type { KeepSafe } from './keep-safe.tsx';
import type { BenchRead } from './read-bench.ts';
import type { Later } from './what-now.ts';

/** What comes once home stands, and anew when records change: answers that take the tables, and what else it shows. */
export function useLater(bench: BenchRead): { answers?: Later; KeepSafe?: typeof KeepSafe } {
  const [later, setLater] = useState({});
  useEffect(() => {
    let over = false;
    const read = async () => {
      const { readLater, KeepSafe } = await import('./later.ts');
      const answers = await readLater(bench, Date.now());
      if (!over) setLater({ answers, KeepSafe });
    };
    // What can't be read the shell speaks of; the other answers go on without.
    whenQuiet(() => void read().catch(() => setLater({ answers: { gluable: new Map(), waits: [], missing: [] } })));
    return () => {
      over = true;
    };
  }, [bench]);
  return later;
}
