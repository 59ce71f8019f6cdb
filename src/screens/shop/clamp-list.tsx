import { offerUndo } from '../../app/notices.ts';
import { shop } from '../../app/shop.ts';
import { type Clamps, defaultShop, type Shop } from '../../store/records/shop.ts';
import { editShop } from '../../store/shop.ts';
import { clampKinds } from '../../tables/clamps.ts';
import { Button } from '../../ui/button.tsx';
import { Pick } from '../../ui/fields.tsx';
import { SettledLength, SettledNumber } from '../../ui/settled.tsx';

const kinds = clampKinds.map(({ id, name }) => ({ value: id, label: name }));

const edit = (change: (clamps: Shop['clamps']) => Shop['clamps']) =>
  editShop((now) => ({ ...now, clamps: change(now.clamps) }));

/** The drawer of clamps, by kind and opening. */
export function ClampList() {
  const { clamps, units } = shop.value;
  return (
    <>
      <h2>Clamps</h2>
      {clamps.map((clamp, at) => {
        const replace = (part: Partial<Clamps>) =>
          edit((now) => now.map((one, place) => (place === at ? { ...one, ...part } : one)));
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
            <Button
              onClick={() => {
                edit((now) => now.toSpliced(at, 1));
                offerUndo('Clamps deleted.', () => edit((now) => now.toSpliced(at, 0, clamp)));
              }}
            >
              Delete
            </Button>
          </div>
        );
      })}
      <Button
        onClick={() => edit((now) => [...now, ...(now.length > 0 ? now : defaultShop(0, units.unit).clamps).slice(-1)])}
      >
        Add clamps
      </Button>
    </>
  );
}
