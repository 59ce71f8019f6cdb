import type { ComponentChildren } from 'preact';
import type { Quantity } from '../core/answer/quantity.ts';
import type { Working } from '../core/answer/worked.ts';
import { Amount } from './amount.tsx';
import { type Fact, Facts } from './facts.tsx';
import { ShowWorking } from './show-working.tsx';

interface Props {
  /** What it is an answer to. */
  label: ComponentChildren;
  of: Quantity;
  /** What else to know. */
  facts?: readonly Fact[];
  working: Working;
  children?: ComponentChildren;
}

/** The one quantity that a screen is opened for, large, with what it rests on. */
export function Answer({ label, of, facts = [], working, children }: Props) {
  return (
    <div class="answer" aria-live="polite">
      <span class="soft">{label}</span>
      <span class="figure">
        <Amount of={of} />
      </span>
      <Facts rows={facts} />
      {children}
      <ShowWorking of={working} />
    </div>
  );
}
