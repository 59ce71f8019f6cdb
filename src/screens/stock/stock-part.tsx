import type { ComponentChildren } from 'preact';
import { routeTo } from '../../app/routes.ts';
import { Screen } from '../../ui/screen.tsx';

/** A part of the stock, from which the thumb goes back to the rack. */
export function StockPart({ question, children }: { question: string; children: ComponentChildren }) {
  return (
    <Screen
      question={question}
      kicker="Stock"
      action={
        <a class="button big" href={routeTo('stock')}>
          To the rack
        </a>
      }
    >
      {children}
    </Screen>
  );
}
