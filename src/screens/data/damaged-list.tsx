import type { Damaged } from '../../store/backup/read-backup.ts';
import { Fold } from '../../ui/fold.tsx';
import { howMany } from '../../ui/how-many.ts';
import { kindName } from './record-name.ts';

const mostShown = 50;

/** Records of a file that can't be taken in; they are kept aside, none is dropped in silence. */
export function DamagedList({ of: damaged }: { of: readonly Damaged[] }) {
  if (damaged.length === 0) return null;
  return (
    <Fold label={`${howMany(damaged.length, 'damaged record')} set aside`}>
      <ul class="rows">
        {damaged.slice(0, mostShown).map(({ kind, why }) => (
          <li>
            <span>
              {kind === 'removed' ? 'Removal' : kindName(kind)}: {why}
            </span>
          </li>
        ))}
        {damaged.length > mostShown && <li>And {damaged.length - mostShown} more.</li>}
      </ul>
    </Fold>
  );
}
