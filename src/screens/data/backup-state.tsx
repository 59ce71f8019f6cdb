import { useLive } from '../../app/live.ts';
import { useNow } from '../../app/now.ts';
import { backups } from '../../app/save-backup.ts';
import { seconds } from '../../core/answer/quantity.ts';
import { backupAge } from '../../store/backup/backup-age.ts';
import { kinds } from '../../store/records/kinds.ts';
import { Amount } from '../../ui/amount.tsx';

/** How old the last backup is, and how much work it does not hold. */
export function BackupState() {
  const now = useNow();
  const age = useLive(kinds, () => backupAge(), `${backups.value}`);
  if (!age) return null;
  const { madeAt, changed } = age;
  return (
    <div class={changed > 0 ? 'answer now' : 'answer'}>
      <p class="figure words">
        {madeAt === undefined ? (
          'Never backed up'
        ) : now - madeAt < 60_000 ? (
          'Backed up just now'
        ) : (
          <>
            Backed up <Amount of={seconds(Math.max(0, Math.round((now - madeAt) / 1000)))} /> ago
          </>
        )}
      </p>
      <p>Records changed since: {changed}. All lie on this phone alone.</p>
    </div>
  );
}
