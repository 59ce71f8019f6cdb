import type { Phrase } from '../core/answer/phrase.ts';
import { Say } from './say.tsx';

/** Sentences one below the other. */
export const SayList = ({ of, look }: { of: readonly Phrase[]; look: 'caution' | 'caution small' | 'rows' }) => (
  <ul class={look}>
    {of.map((phrase) => (
      <li>
        <span>
          <Say phrase={phrase} />
        </span>
      </li>
    ))}
  </ul>
);
