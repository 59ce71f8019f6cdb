import { type Phrase, phrasePieces } from '../core/answer/phrase.ts';
import { Amount } from './amount.tsx';

/** A phrase of the core with its quantities in the maker's units. */
export function Say({ phrase }: { phrase: Phrase }) {
  return <>{phrasePieces(phrase).map((piece) => (typeof piece === 'string' ? piece : <Amount of={piece} />))}</>;
}
