import { useLive } from '../../app/live.ts';
import { notify } from '../../app/notices.ts';
import { sumOf } from '../../core/answer/sum-of.ts';
import { restoreSnapshot } from '../../store/backup/restore-snapshot.ts';
import { listSnapshots, type SnapshotReason } from '../../store/backup/snapshots.ts';
import { kinds } from '../../store/records/kinds.ts';
import { Button } from '../../ui/button.tsx';
import { howMany } from '../../ui/how-many.ts';

const reasons: Readonly<Record<SnapshotReason, string>> = {
  automatic: 'by itself',
  migration: 'before a new version',
  restore: 'before a restore',
  merge: 'before a merge',
};

/** Snapshots inside the phone: the way back from a restore or a new version. */
export function SnapshotList() {
  const snapshots = useLive(kinds, listSnapshots);
  if (!snapshots || snapshots.length === 0) return null;
  const restore = async (id: string) => {
    const outcome = await restoreSnapshot(id);
    notify(
      outcome.kind === 'applied' ? 'The snapshot is back in place.' : 'The phone did not take it. Nothing has changed.',
    );
  };
  return (
    <section>
      <h2>Snapshots on this phone</h2>
      <ul class="rows">
        {snapshots.map((snapshot) => (
          <li key={snapshot.id}>
            <span>
              {new Date(snapshot.at).toLocaleString()}
              <br />
              <span class="soft small">
                {reasons[snapshot.reason]},{' '}
                {howMany(
                  sumOf(Object.values(snapshot.counts), (count) => count),
                  'record',
                )}
              </span>
            </span>
            <Button onClick={() => restore(snapshot.id)}>Put back</Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
