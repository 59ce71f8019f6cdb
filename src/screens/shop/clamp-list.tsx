import { offerUndo } from '../../app/notices.ts';
import { badNumber } from '../../core/answer/bad-number.ts';
import type { Clamps } from '../../store/records/shop.ts';
import { clampKinds as kinds } from '../../tables/clamps.ts';
import { Pick } from '../../ui/fields.tsx';
import { SettledLength, SettledNumber } from '../../ui/settled.tsx';

interface Props {
  clamps: readonly Clamps[];
  onChange(clamps: readonly Clamps[]): void;
}

/** The drawer of clamps, by kind and opening. */
export function ClampList({ clamps, onChange }: Props) {
  const replace = (at: number, part: Partial<Clamps>) =>
    onChange(clamps.map((clamp, index) => (index === at ? { ...clamp, ...part } : clamp)));
  return (
    <>
      <h2>Clamps</h2>
      {clamps.map((clamp, at) => (
        <div class="card">
          <Pick
            label="Kind"
            value={clamp.kind}
            options={kinds.map(({ id, name }) => ({ value: id, label: name }))}
            onInput={(kind) => replace(at, { kind })}
          />
          <div class="fields">
            <SettledLength
              label="Opening"
              value={clamp.opening}
              check={(value) => badNumber('', 'The opening', value, 'mm', { least: 20, most: 5000 })}
              onAccept={(opening) => replace(at, { opening })}
            />
            <SettledNumber
              label="How many"
              value={clamp.count}
              check={(value) => badNumber('', 'The number', value, 'count', { least: 1, most: 500, whole: true })}
              onAccept={(count) => replace(at, { count })}
            />
          </div>
          <button
            type="button"
            class="button"
            onClick={() => {
              onChange(clamps.filter((_, index) => index !== at));
              offerUndo('Clamps taken off the list.', () => onChange(clamps));
            }}
          >
            Take off the list
          </button>
        </div>
      ))}
      <button
        type="button"
        class="button"
        onClick={() =>
          onChange([...clamps, { kind: clamps.at(-1)?.kind ?? kinds[0]?.id ?? 'bar', opening: 600, count: 2 }])
        }
      >
        Add clamps
      </button>
    </>
  );
}
