import type { Phrase } from '../../core/answer/phrase.ts';
import { Say } from '../../ui/say.tsx';

/** A phrase of the planner, which knows boards and parts by id, in the maker's own names. */
export function WithNames({ said, names }: { said: Phrase; names: ReadonlyMap<string, string> }) {
  const text = [...names].reduce((sentence, [id, name]) => sentence.replaceAll(id, name), said.text);
  return <Say phrase={{ ...said, text }} />;
}
