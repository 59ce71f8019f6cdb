import { shop } from '../../app/shop.ts';
import { editShop } from '../../store/shop.ts';
import { SettledNumber } from '../../ui/settled.tsx';
import { springBackOf } from './habits.ts';

/** The part of a pull that a case gives back once the clamp is off. */
export function SpringBack() {
  return (
    <section class="card" aria-label="Spring-back">
      <SettledNumber
        label="Springs back"
        hint="% of the pull; common practice"
        value={Math.round(springBackOf(shop.value.square) * 1e4) / 100}
        unit="percent"
        limits={{ least: 0, most: 80 }}
        onAccept={(percent) =>
          editShop(({ square, ...now }) => ({ ...now, square: { ...square, springBack: percent / 100 } }))
        }
      />
      <p class="small">
        Tighten a little at a time, fingers out of the clamp. Pads under the jaws, across the diagonal.
      </p>
    </section>
  );
}
