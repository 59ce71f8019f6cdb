import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { FiguresNote } from '../../ui/figures-note.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { JointDrawing } from './joint-drawing.tsx';
import type { Judged } from './read-joint.ts';
import { verdictWords } from './verdict-words.ts';
import { WoodTrouble } from './wood-trouble.tsx';

/** May a joint be glued, and why. */
export function JointFound({ of }: { of: Outcome<Judged> }) {
  if (isProblem(of)) return <WoodTrouble of={of} />;
  const { value, working } = of.verdict;
  return (
    <>
      <div class={value.moves ? 'answer now' : 'answer'}>
        <p class="figure words">{verdictWords(value)}</p>
        <p>
          <Say phrase={value.reason} />
        </p>
        <FiguresNote estimated={value.estimated} sources={working.sources} />
        <ShowWorking of={working} />
      </div>
      <JointDrawing joint={of} />
    </>
  );
}
