import type { SourceId } from '../core/answer/source-id.ts';

interface Props {
  /** Whether it rests on the shrinkage of the volume alone. */
  estimated: boolean;
  sources: readonly SourceId[];
}

/** What a movement rests on, when that is not the handbook's figure for the wood. */
export function FiguresNote({ estimated, sources }: Props) {
  if (estimated) return <p class="soft">A guess: of this wood only the shrinkage of its volume is known.</p>;
  return sources.includes('label') ? <p class="soft">By the figures you typed in for the wood.</p> : null;
}
