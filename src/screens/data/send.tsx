import { useState } from 'preact/hooks';
import { useLive } from '../../app/live.ts';
import { notify } from '../../app/notices.ts';
import { deliveries } from '../../store/deliveries.ts';
import { pieces } from '../../store/pieces.ts';
import { Pick } from '../../ui/fields.tsx';
import { saveFile } from '../../ui/save-file.ts';

const readChoices = async () => [
  ...(await pieces.all()).map(({ id, name }) => ({ kind: 'piece' as const, id, name })),
  ...(await deliveries.all()).map(({ id, supplier, date }) => ({
    kind: 'delivery' as const,
    id,
    name: `${supplier}, ${date}`,
  })),
];

/** One piece or one delivery for another phone, through the share sheet, as a file, or as text. */
export function Send() {
  const choices = useLive(['piece', 'delivery'], readChoices);
  const [picked, setPicked] = useState('');
  if (!choices || choices.length === 0) return null;
  const what = choices.find(({ id }) => id === picked) ?? choices[0];
  const made = async () => {
    const { exportExtract } = await import('../../store/backup/export-backup.ts');
    return what && exportExtract(what, what.name);
  };
  const send = async () => {
    const file = await made();
    if (file && (await saveFile(file.name, 'application/json', file.text)) === 'saved')
      notify('Saved to the downloads. Send that file on.');
  };
  const copy = async () => {
    const file = await made();
    if (!file) return;
    try {
      await navigator.clipboard.writeText(file.text);
      notify('Copied. Paste it into a message; the other phone pastes it here.');
    } catch {
      notify('The phone does not let the app copy. Send the file instead.');
    }
  };
  return (
    <section class="card" aria-label="Send to another phone">
      <h2>Send to another phone</h2>
      <p>The other phone opens it here, and merges it with what it has. To send everything, take a backup.</p>
      <Pick
        label="What to send"
        value={what?.id ?? ''}
        options={choices.map(({ id, kind, name }) => ({
          value: id,
          label: kind === 'piece' ? name : `Delivery: ${name}`,
        }))}
        onInput={setPicked}
      />
      <div class="buttons">
        <button type="button" class="button" onClick={() => void send()}>
          Send it
        </button>
        <button type="button" class="button" onClick={() => void copy()}>
          Copy as text
        </button>
      </div>
    </section>
  );
}
