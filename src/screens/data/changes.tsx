import type { Difference } from '../../store/backup/merge.ts';
import type { Preview } from '../../store/backup/preview-backup.ts';
import { Fold } from '../../ui/fold.tsx';
import { recordName } from './record-name.ts';

const words: Readonly<Record<Difference, string>> = {
  new: 'new to this phone',
  newer: 'newer in the file',
  older: 'newer here',
  conflict: 'changed on both sides',
  removed: 'removed here',
  same: 'the same',
};
const mostNamed = 200;

/** What would change, in numbers; the records themselves can be opened. */
export function Changes({ of: entries }: { of: Preview }) {
  const changed = entries.filter(({ difference }) => difference !== 'same');
  return (
    <>
      <ul>
        {(Object.keys(words) as Difference[]).map((one) => {
          const { length } = entries.filter(({ difference }) => difference === one);
          return (
            length > 0 && (
              <li>
                <b>{length}</b> {words[one]}
              </li>
            )
          );
        })}
      </ul>
      {changed.length > 0 && (
        <Fold label="Which ones">
          <ul class="rows">
            {changed.slice(0, mostNamed).map(({ kind, mine, theirs, difference }) => (
              <li>
                <span>{recordName(kind, theirs ?? mine)}</span>
                <span class="soft small">{words[difference]}</span>
              </li>
            ))}
            {changed.length > mostNamed && <li>And {changed.length - mostNamed} more.</li>}
          </ul>
        </Fold>
      )}
    </>
  );
}
