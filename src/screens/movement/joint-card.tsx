import { offerUndo } from '../../app/notices.ts';
import { isProblem } from '../../core/answer/problem.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import { pieces } from '../../store/pieces.ts';
import type { Fixing, Joint, Piece } from '../../store/records/piece.ts';
import { FiguresNote } from '../../ui/figures-note.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { Alignment } from './alignment.tsx';
import { JointDrawing } from './joint-drawing.tsx';
import { jointKind } from './joint-kinds.ts';
import { movingPart, usualFixing } from './joint-slots.ts';
import { MeetingEntries } from './meeting-entries.tsx';
import { judge } from './read-joint.ts';
import { Slots } from './slots.tsx';
import { verdictWords } from './verdict-words.ts';

interface Props {
  piece: Piece;
  joint: Joint;
  seasons: Seasons;
}

/** One joint: may it be glued, why, and how to let it move when it may not. */
export function JointCard({ piece, joint, seasons }: Props) {
  // A write that fails is kept and shown by the shell.
  const edit = (change: (joints: readonly Joint[]) => readonly Joint[], then = () => {}) =>
    void pieces.change(piece.id, (now) => ({ ...now, joints: change(now.joints) })).then(then, () => {});
  const set = (part: Partial<Joint>) =>
    edit((joints) => joints.map((one) => (one.id === joint.id ? { ...one, ...part } : one)));
  const setFixing = (length: number, change: (now: Fixing) => Fixing) =>
    edit((joints) =>
      joints.map((one) => (one.id === joint.id ? { ...one, fixing: change(one.fixing ?? usualFixing(length)) } : one)),
    );
  const remove = () => {
    const at = piece.joints.findIndex(({ id }) => id === joint.id);
    edit(
      (joints) => joints.filter(({ id }) => id !== joint.id),
      () => offerUndo('The joint is off the list.', () => edit((joints) => joints.toSpliced(at, 0, joint))),
    );
  };
  const judged = judge(joint, piece.parts, seasons);
  const names = joint.parts.map((id) => piece.parts.find((part) => part.id === id)?.name ?? 'a part that is gone');
  return (
    <li class="task">
      <h2>
        {names.join(' to ')} <span class="soft small">{jointKind(joint.kind).name}</span>
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
          {judged.verdict.value.moves && movingPart(judged) !== undefined && judged.meets[0].surface !== 'mitre' && (
            <Slots joint={judged} seasons={seasons} onChange={(change) => setFixing(judged.contact.length, change)} />
          )}
          {(joint.kind === 'seam' || joint.kind === 'mitre') && <Alignment joint={judged} />}
          <MeetingEntries joint={judged} seasons={seasons} onChange={set} />
        </>
      )}
      <button type="button" class="button" onClick={remove}>
        Take this joint off
      </button>
    </li>
  );
}
