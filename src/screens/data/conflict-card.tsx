import type { MergeEntry } from '../../store/backup/merge.ts';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { recordDifferences } from './record-differences.ts';
import { recordName } from './record-name.ts';
import { SideValue } from './side-value.tsx';

const mostShown = 12;
const sides = optionsOf({ mine: 'The one here', theirs: 'The file’s' });

interface Props {
  entry: MergeEntry;
  side: 'mine' | 'theirs';
  onChoose(side: 'mine' | 'theirs'): void;
}

/** One record that was changed on both phones: what each side says, and which one stays. */
export function ConflictCard({ entry, side, onChoose }: Props) {
  const { kind, mine, theirs } = entry;
  const name = recordName(kind, mine ?? theirs);
  const differences = mine && theirs ? recordDifferences(mine, theirs) : [];
  const changedAt = { path: ['changed at'], mine: mine?.updated, theirs: theirs?.updated };
  return (
    <li class="received">
      <table class="two-sides">
        <caption>{name}</caption>
        <thead>
          <tr>
            <th scope="col">Here</th>
            <th scope="col">In the file</th>
          </tr>
        </thead>
        {[...differences.slice(0, mostShown), changedAt].map(({ path, mine, theirs }) => (
          <tbody>
            <tr>
              <th scope="rowgroup" colSpan={2}>
                {path.join(' · ')}
              </th>
            </tr>
            <tr>
              {[mine, theirs].map((value) => (
                <td>
                  <SideValue name={path.at(-1) ?? ''} value={value} />
                </td>
              ))}
            </tr>
          </tbody>
        ))}
      </table>
      {differences.length > mostShown && <p class="small soft">And {differences.length - mostShown} more.</p>}
      <Choice label={`${name}: which one stays?`} value={side} options={sides} onInput={onChoose} />
    </li>
  );
}
