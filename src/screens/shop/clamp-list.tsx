import { offerUndo } from '../../app/notices.ts';
import type { Clamps } from '../../store/records/shop.ts';
import { clampKinds } from '../../tables/clamps.ts';
import { Button } from '../../ui/button.tsx';
import { Pick } from '../../ui/fields.tsx';
import { SettledLength, SettledNumber } from '../../ui/settled.tsx';

interface Props {
  clamps: readonly Clamps[];
  onChange(clamps: readonly Clamps[]): void;
}

const kinds = clampKinds.map(({ id, name }) => ({ value: id, label: name }));

/** The drawer of clamps, by kind and opening. */
export function ClampList({ clamps, onChange }: Props) {
  const takeOff = (at: number) => {
    onChange(clamps.toSpliced(at, 1));
    offerUndo('Clamps deleted.', () => onChange(clamps));
  };
  return (
    <>
      <h2>Clamps</h2>
      {clamps.map((clamp, at) => {
        const replace = (part: Partial<Clamps>) => onChange(clamps.with(at, { ...clamp, ...part }));
        return (
          <div class="card">
            <Pick label="Kind" value={clamp.kind} options={kinds} onInput={(kind) => replace({ kind })} />
            <div class="fields">
              <SettledLength
                label="Opening"
                value={clamp.opening}
                limits={{ least: 20, most: 5000 }}
                onAccept={(opening) => replace({ opening })}
              />
              <SettledNumber
                label="How many"
                value={clamp.count}
                unit="count"
                limits={{ least: 1, most: 500, whole: true }}
                onAccept={(count) => replace({ count })}
              />
            </div>
            <Button onClick={() => takeOff(at)}>Delete</Button>
          </div>
        );
      })}
      <Button
        onClick={() => onChange([...clamps, { kind: clamps.at(-1)?.kind ?? 'bar-light', opening: 600, count: 2 }])}
      >
        Add clamps
      </Button>
    </>
  );
}
