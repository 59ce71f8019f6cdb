import { isProblem } from '../../core/answer/problem.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Piece } from '../../store/records/piece.ts';
import { JointCard } from './joint-card.tsx';
import { JointEntry } from './joint-entry.tsx';
import { judge } from './read-joint.ts';

/** The joints of the piece: how many must move, each with its verdict, and the next one. */
export function Joints({ piece, seasons }: { piece: Piece; seasons: Seasons }) {
  const judged = piece.joints.map((joint) => judge(joint, piece.parts, seasons));
  const moving = judged.filter((one) => !isProblem(one) && one.verdict.value.moves).length;
  return (
    <>
      {piece.joints.length > 0 ? (
        <div class={moving > 0 ? 'answer now' : 'answer'} aria-live="polite">
          <span class="figure words">
            {moving === 0 ? 'None must move' : `${moving} of ${piece.joints.length} must move`}
          </span>
          <span class="soft">Above the trade’s usual limit for glue across the grain.</span>
        </div>
      ) : (
        <p>Say which parts meet. Each joint gets its verdict: glue it, or let it float and by how much.</p>
      )}
      <ul class="tasks">
        {piece.joints.map((joint) => (
          <JointCard key={joint.id} piece={piece} joint={joint} seasons={seasons} />
        ))}
      </ul>
      <JointEntry piece={piece} />
    </>
  );
}
