import { useState } from 'preact/hooks';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Say } from '../../ui/say.tsx';
import { JointCard } from './joint-card.tsx';
import { JointEntry } from './joint-entry.tsx';
import { JointTitle } from './joint-title.tsx';
import { OpenRow } from './open-row.tsx';
import { type Judged, judge } from './read-joint.ts';
import { verdictWords } from './verdict-words.ts';

/** The joints of the piece: how many must move, each with its verdict, and the next one. A tap opens one. */
export function Joints({ piece, seasons }: { piece: Piece; seasons: Seasons }) {
  const { joints, parts } = piece;
  const [open, setOpen] = useState(joints.length === 1 ? joints[0]?.id : undefined);
  const rows = joints.map((joint) => ({ joint, judged: judge(joint, parts, seasons) }));
  const moving = rows.filter(({ judged }) => !isProblem(judged) && judged.verdict.value.moves).length;
  return (
    <>
      {joints.length > 0 ? (
        <div class={moving > 0 ? 'answer now' : 'answer'} aria-live="polite">
          <span class="figure words">
            {moving === 0 ? 'None must move' : `${moving} of ${joints.length} must move`}
          </span>
        </div>
      ) : (
        <p>Each joint gets its verdict: glue it, or let it float.</p>
      )}
      <ul class="parts">
        {rows.map(({ joint, judged }) => (
          <OpenRow
            key={joint.id}
            id={joint.id}
            title={<JointTitle joint={joint} parts={parts} />}
            short={joint.id !== open && <InShort of={judged} />}
            open={open}
            onOpen={setOpen}
          >
            <JointCard piece={piece} joint={joint} judged={judged} />
          </OpenRow>
        ))}
      </ul>
      <JointEntry piece={piece} onAdd={setOpen} />
    </>
  );
}

function InShort({ of }: { of: Outcome<Judged> }) {
  if (isProblem(of)) return <Say phrase={of.message} />;
  const { value } = of.verdict;
  return (
    <>
      {value.moves && '↔ '}
      {verdictWords(value)}
    </>
  );
}
