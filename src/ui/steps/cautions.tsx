import { Fold } from '../fold.tsx';
import { howMany } from '../how-many.ts';
import { Say } from '../say.tsx';
import { SourceMark } from '../source-mark.tsx';
import type { FlowStep } from './flow-step.ts';

/** The most urgent stand open; the usual ones of a machine, read many times, fold away below them. */
const standOpen = 2;

/** The cautions of a step, each with what it rests on. */
export function Cautions({ of }: { of: FlowStep['cautions'] }) {
  const shown = of.map(({ say, source }) => (
    <p class="caution">
      <span>
        <b>Caution.</b> <Say phrase={say} /> <SourceMark of={source} />
      </span>
    </p>
  ));
  const folded = shown.slice(standOpen);
  return (
    <div class="cautions">
      {shown.slice(0, standOpen)}
      {folded.length > 0 && <Fold label={howMany(folded.length, 'more caution')}>{folded}</Fold>}
    </div>
  );
}
