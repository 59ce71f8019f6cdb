import { useDraft } from '../../app/draft.ts';
import { removeRun } from '../../app/remove-run.ts';
import { go } from '../../app/routes.ts';
import { glueups } from '../../store/glueups.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { clockTime } from '../../ui/clock-time.ts';
import { TextField } from '../../ui/fields.tsx';

/** What happened at this glue-up, as it happened, and how it held. */
export function RunLog({ glueup, now }: { glueup: Glueup; now: number }) {
  const draft = useDraft<string>(`glue-log-1-${glueup.id}`, '');
  const text = (draft.value ?? '').trim();
  const add = async () => {
    const at = Date.now();
    try {
      await glueups.change(glueup.id, (record) => ({ ...record, log: [...(record.log ?? []), { at, text }] }));
      draft.clear();
    } catch {
      // Not stored: the shell keeps and shows it; the words stay in the entry.
    }
  };
  const drop = () => {
    go('glue');
    void removeRun('glueup', glueup.id, `${glueup.name} deleted.`);
  };
  return (
    <Card title="Log">
      <ol class="rows">
        {glueup.log?.map((entry) => (
          <li>
            <span>{entry.text}</span>
            <span class="soft small">{clockTime(entry.at, now)}</span>
          </li>
        ))}
      </ol>
      {draft.value !== undefined && (
        <TextField label="Note, such as how it held" value={draft.value} onInput={draft.set} />
      )}
      <div class="buttons">
        <Button disabled={text === ''} onClick={add}>
          Add to the log
        </Button>
        <Button look="plain" onClick={drop}>
          Delete this glue-up
        </Button>
      </div>
    </Card>
  );
}
