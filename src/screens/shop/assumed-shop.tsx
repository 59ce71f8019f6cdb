import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { editShop } from '../../store/shop.ts';
import { Button } from '../../ui/button.tsx';
import { Length } from '../../ui/length.tsx';

/** Where machines set the limits: by which ones it goes until the maker has said, and the way to say so. */
export function AssumedShop() {
  const { revision, machines } = shop.value;
  if (revision > 0) return null;
  return (
    <section class="card" aria-label="Your shop">
      <p>
        Your shop is not set yet. This goes by a jointer of <Length mm={machines.jointer.width} />, a planer of{' '}
        <Length mm={machines.planer.width} /> and a table saw.
      </p>
      <div class="buttons">
        <a class="button" href={routeTo('shop')}>
          Set my shop
        </a>
        <Button onClick={() => editShop((now) => now)}>Mine is like that</Button>
      </div>
    </section>
  );
}
