import { useEffect, useState } from 'preact/hooks';
import { notify } from '../../app/notices.ts';
import { applyBackup } from '../../store/backup/apply-backup.ts';
import type { MergeEntry } from '../../store/backup/merge.ts';
import { type ApplyMode, type Preview, previewBackup } from '../../store/backup/preview-backup.ts';
import type { ReadOutcome } from '../../store/backup/read-backup.ts';
import { ownWoodsIn } from '../../store/backup/woods-of-part.ts';
import { Button } from '../../ui/button.tsx';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { howMany } from '../../ui/how-many.ts';
import { Changes } from './changes.tsx';
import { ConflictCard } from './conflict-card.tsx';
import { DamagedList } from './damaged-list.tsx';

interface Props {
  read: Extract<ReadOutcome, { kind: 'read' }>;
  onDone(): void;
}

const keyOf = ({ kind, id }: MergeEntry) => `${kind}/${id}`;

/** What a file holds, what would change by it, both sides of what doesn't agree; then the maker says how. */
export function Received({ read, onDone }: Props) {
  const { contents, damaged, altered, madeAt, only } = read;
  const woods = ownWoodsIn(contents);
  const [mode, setMode] = useState<ApplyMode>('merge');
  const [previews, setPreviews] = useState<Readonly<Record<ApplyMode, Preview>>>();
  const [sides, setSides] = useState<ReadonlyMap<string, 'mine' | 'theirs'>>(new Map());
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    previewBackup(contents, only !== undefined).then(setPreviews, () => setFailed(true));
  }, [contents]);

  const conflicts = mode === 'merge' ? (previews?.merge ?? []).filter(isConflict) : [];
  const sideOf = (entry: MergeEntry) => sides.get(keyOf(entry)) ?? entry.stays;
  const apply = async () => {
    const choices = new Map(conflicts.map((entry) => [keyOf(entry), sideOf(entry)]));
    const outcome = await applyBackup(contents, mode, { damaged, choices, part: only !== undefined });
    setFailed(outcome.kind === 'failed');
    if (outcome.kind === 'failed') return;
    onDone();
    notify('The records are in. A snapshot keeps how it was.');
  };

  return (
    <>
      <p>
        {only === undefined ? 'A whole shop' : only}, taken out {new Date(madeAt).toLocaleString()}.{' '}
        {howMany(Object.values(contents.kinds).flat().length, 'record')}.
      </p>
      {altered && <p class="trouble">This file was changed after the app made it. Look closely.</p>}
      {mode === 'merge' && woods.length > 0 && (
        <p>
          With the figures of {woods.map(({ name }) => name).join(', ')}.
          {only !== undefined && ' A wood that you have by the same name stays as it is here.'}
        </p>
      )}
      <DamagedList of={damaged} />
      {only === undefined && (
        <Choice<ApplyMode>
          label="How?"
          value={mode}
          options={optionsOf<ApplyMode>({ merge: 'Merge: keep the newest of each', replace: 'Replace everything' })}
          onInput={setMode}
        />
      )}
      {previews && <Changes of={previews[mode]} />}
      {conflicts.length > 0 && (
        <>
          <h3>Changed on both sides</h3>
          <ul class="received">
            {conflicts.map((entry) => (
              <ConflictCard
                key={keyOf(entry)}
                entry={entry}
                side={sideOf(entry)}
                onChoose={(side) => setSides(new Map(sides).set(keyOf(entry), side))}
              />
            ))}
          </ul>
        </>
      )}
      {failed && <p class="trouble">The phone did not take it. Nothing has changed.</p>}
      <Button look="big now" disabled={!previews} onClick={apply}>
        {mode === 'merge' ? 'Merge it in' : 'Replace everything with it'}
      </Button>
    </>
  );
}

const isConflict = ({ difference }: MergeEntry) => difference === 'conflict';
