import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Reason } from '../../ui/reason.tsx';
import { FloatingFound } from '../movement/floating-found.tsx';
import { JointFound } from '../movement/joint-found.tsx';
import { JointTitle } from '../movement/joint-title.tsx';
import { judge } from '../movement/read-joint.ts';
import { SeasonFacts } from '../movement/season-facts.tsx';
import { seasonsOfPiece } from '../movement/seasons-of-piece.ts';
import { useStock } from '../movement/use-stock.ts';
import { SheetPart } from './sheet-part.tsx';

/** Each joint with its verdict, and the slots of those that must move. */
export function JointsOnSheet({ piece }: { piece: Piece }) {
  const seasons = seasonsOfPiece(piece, shop.value, useStock(piece), Date.now());
  return (
    <SheetPart title="Joints" missing="None listed yet.">
      {piece.joints.length > 0 &&
        (isProblem(seasons) ? (
          <Reason of={seasons} />
        ) : (
          <>
            <SeasonFacts of={seasons.value} />
            {piece.joints.map((joint) => {
              const judged = judge(joint, piece.parts, seasons.value);
              return (
                <section class="task">
                  <h2>
                    <JointTitle joint={joint} parts={piece.parts} />
                  </h2>
                  <JointFound of={judged} />
                  {!isProblem(judged) && <FloatingFound joint={judged} />}
                </section>
              );
            })}
          </>
        ))}
    </SheetPart>
  );
}
