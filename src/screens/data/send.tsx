import { useState } from 'preact/hooks';
import { useLive } from '../../app/live.ts';
import { notify } from '../../app/notices.ts';
import { exportExtract } from '../../store/backup/export-backup.ts';
import { deliveries } from '../../store/deliveries.ts';
import { pieces } from '../../store/pieces.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { day } from '../../ui/day.ts';
import { Pick } from '../../ui/fields.tsx';
import { saveFile } from '../../ui/save-file.ts';

const readChoices = async () => [
  ...(await pieces.all()).map(({ id, name }) => ({ kind: 'piece' as const, value: id, label: name })),
  ...(await deliveries.all()).map(({ id, supplier, date }) => ({
    kind: 'delivery' as const,
    value: id,
    label: `Delivery: ${supplier}, ${day(date)}`,
  })),
];

/** One piece or one delivery for another phone, through the share sheet, as a file, or as text. */
export function Send() {
  const choices = useLive(['piece', 'delivery'], readChoices) ?? [];
  const [picked, setPicked] = useState('');
  const what = choices.find(({ value }) => value === picked) ?? choices[0];
  if (!what) return null;
  const made = () => exportExtract({ kind: what.kind, id: what.value }, what.label);
  const send = async () => {
    const file = await made();
    if ((await saveFile(file.name, 'application/json', file.text)) === 'saved')
      notify('Saved to the downloads. Send it on.');
  };
  const copy = async () => {
    const file = await made();
    try {
      await navigator.clipboard.writeText(file.text);
      notify('Copied. The other phone pastes it here.');
    } catch {
      notify('The phone does not let the app copy. Send the file.');
    }
  };
  return (
    <Card title="Send to another phone">
      <p>The other phone opens it here. To send everything, take a backup.</p>
      <Pick label="What to send" value={what.value} options={choices} onInput={setPicked} />
      <div class="buttons">
        <Button onClick={send}>Send it</Button>
        <Button onClick={copy}>Copy as text</Button>
      </div>
    </Card>
  );
}
