import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Joint, Part } from '../../store/records/piece.ts';
import { FiguresNote } from '../../ui/figures-note.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { JointDrawing } from './joint-drawing.tsx';
import { jointKind } from './joint-kinds.ts';
import type { Judged } from './read-joint.ts';
import { verdictWords } from './verdict-words.ts';

interface Props {
  joint: Joint;
  parts: readonly Part[];
  judged: Outcome<Judged>;
}

/** One joint: which parts meet, may it be glued, and why. */
export function JointFound({ joint, parts, judged }: Props) {
  const names = joint.parts.map((id) => parts.find((part) => part.id === id)?.name ?? 'a part that is gone');
  return (
    <>
      <h2>
        {names.join(' to ')}{' '}
        <span class="soft small">
          {jointKind(joint.kind)?.name ?? joint.kind} {joint.note}
        </span>
      </h2>
      {isProblem(judged) ? (
        <Trouble of={judged} />
      ) : (
        <>
          <div class={judged.verdict.value.moves ? 'answer now' : 'answer'}>
            <p class="figure words">{verdictWords(judged.verdict.value)}</p>
            <p>
              <Say phrase={judged.verdict.value.reason} />
            </p>
            <FiguresNote estimated={judged.verdict.value.estimated} sources={judged.verdict.working.sources} />
            <ShowWorking of={judged.verdict.working} />
          </div>
          <JointDrawing joint={judged} />
        </>
      )}
    </>
  );
}
