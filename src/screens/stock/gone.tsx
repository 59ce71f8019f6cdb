import { routeTo } from '../../app/routes.ts';
import { Screen } from '../../ui/screen.tsx';

/** What the address names isn't there any more. */
export function Gone() {
  return (
    <Screen
      question="This is gone"
      kicker="Stock"
      action={
        <a class="button big now" href={routeTo('stock')}>
          To the rack
        </a>
      }
    >
      <p>It was deleted, here or in another tab.</p>
    </Screen>
  );
}
