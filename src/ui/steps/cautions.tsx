import { Fold } from '../fold.tsx';
import { Say } from '../say.tsx';
import { SourceMark } from '../source-mark.tsx';
import type { FlowStep } from './flow-step.ts';

/** The most urgent stand open; the usual ones of a machine, read many times, fold away below them. */
const standOpen = 2;

/** The cautions of a step, each with what it rests on. */
export function Cautions({ of }: { of: FlowStep['cautions'] }) {
  const folded = of.slice(standOpen);
  return (
    <div class="cautions">
      {of.slice(0, standOpen).map((one) => (
        <Caution of={one} />
      ))}
      {folded.length > 0 && (
        <Fold label={`${folded.length} more ${folded.length === 1 ? 'caution' : 'cautions'}`}>
          {folded.map((one) => (
            <Caution of={one} />
          ))}
        </Fold>
      )}
    </div>
  );
}

function Caution({ of: { say, source } }: { of: FlowStep['cautions'][number] }) {
  return (
    <p class="caution">
      <span>
        <b>Caution.</b> <Say phrase={say} /> <SourceMark of={source} />
      </span>
    </p>
  );
}
