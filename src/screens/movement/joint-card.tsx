import { undoable } from '../../app/notices.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { pieces } from '../../store/pieces.ts';
import type { Joint, Piece } from '../../store/records/piece.ts';
import { Button } from '../../ui/button.tsx';
import { Alignment } from './alignment.tsx';
import { Floating } from './floating.tsx';
import { JointFound } from './joint-found.tsx';
import { MeetingEntries } from './meeting-entries.tsx';
import type { Judged } from './read-joint.ts';

interface Props {
  piece: Piece;
  joint: Joint;
  judged: Outcome<Judged>;
}

/** One joint: may it be glued, why, and how to let it move when it may not. */
export function JointCard({ piece, joint, judged }: Props) {
  const edit = (change: (joints: readonly Joint[]) => readonly Joint[]) =>
    pieces.change(piece.id, (now) => ({ ...now, joints: change(now.joints) }));
  const set = (change: (now: Joint) => Joint) =>
    pieces.edit(piece.id, (now) => ({
      ...now,
      joints: now.joints.map((one) => (one.id === joint.id ? change(one) : one)),
    }));
  const remove = () =>
    undoable(
      edit((joints) => joints.filter(({ id }) => id !== joint.id)),
      'Joint deleted.',
      () => edit((joints) => joints.toSpliced(piece.joints.indexOf(joint), 0, joint)),
    );
  return (
    <div class="task">
      <JointFound of={judged} />
      {!isProblem(judged) && (
        <>
          <Floating joint={judged} onChange={set} />
          {(joint.kind === 'seam' || joint.kind === 'mitre') && <Alignment joint={judged} joints={piece.joints} />}
          <MeetingEntries joint={judged} onChange={(part) => set((now) => ({ ...now, ...part }))} />
        </>
      )}
      <Button onClick={remove}>Delete this joint</Button>
    </div>
  );
}
