import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { percent } from '../../core/answer/quantity.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Facts } from '../../ui/facts.tsx';
import { Reason } from '../../ui/reason.tsx';
import { FloatingFound } from '../movement/floating-found.tsx';
import { JointFound } from '../movement/joint-found.tsx';
import { judge } from '../movement/read-joint.ts';
import { seasonsOfPiece } from '../movement/seasons-of-piece.ts';
import { SheetPart } from './sheet-part.tsx';

/** Each joint with its verdict, and the slots of those that must move. */
export function JointsOnSheet({ piece }: { piece: Piece }) {
  const seasons = seasonsOfPiece(piece, shop.value);
  return (
    <SheetPart title="Joints" missing="No joints are listed yet.">
      {piece.joints.length > 0 &&
        (isProblem(seasons) ? (
          <Reason of={seasons} />
        ) : (
          <>
            <Facts
              rows={[
                [piece.reading ? 'Moisture today' : 'Moisture today, assumed', percent(seasons.value.today)],
                ['in the dry season', percent(seasons.value.dry)],
                ['in the damp season', percent(seasons.value.wet)],
              ]}
            />
            {piece.joints.map((joint) => {
              const judged = judge(joint, piece.parts, seasons.value);
              return (
                <section class="task">
                  <JointFound joint={joint} parts={piece.parts} judged={judged} />
                  {!isProblem(judged) && <FloatingFound joint={judged} seasons={seasons.value} />}
                </section>
              );
            })}
          </>
        ))}
    </SheetPart>
  );
}
