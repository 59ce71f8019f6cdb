import { isProblem } from '../../core/answer/problem.ts';
import { BoardsView } from '../breakdown/boards-view.tsx';
import { foldLayout } from '../breakdown/fold-edits.ts';
import { FoldLayout } from '../breakdown/fold-layout.tsx';
import { namesOf } from '../breakdown/names.ts';
import { PanelsView } from '../breakdown/panels-view.tsx';
import { ShortageList } from '../breakdown/shortage-list.tsx';
import { solvedProblem } from '../breakdown/solved-problem.ts';
import type { SheetRecords } from './read-sheet.ts';
import { SheetPart } from './sheet-part.tsx';

/** The plan of the cuts: board by board, panel by panel, and what folds round corners. */
export function CutsOnSheet({ of: { piece, rack, plan } }: { of: SheetRecords }) {
  const cuts = plan && { piece, rack, plan, asked: solvedProblem(plan), names: namesOf(piece, rack) };
  return (
    <>
      <SheetPart title="Boards" missing="Not planned yet.">
        {cuts && (
          <>
            {cuts.plan.short.length > 0 && <ShortageList {...cuts} />}
            <BoardsView {...cuts} />
          </>
        )}
      </SheetPart>
      {cuts && (
        <SheetPart title="Panels" missing="">
          <PanelsView {...cuts} />
          {piece.parts.map((part) => {
            const layout = foldLayout(part, cuts.asked.shop.crosscutKerf);
            if (!layout || isProblem(layout)) return null;
            return (
              <section class="card">
                <h2>{part.name} folds round corners</h2>
                <FoldLayout width={part.width} of={layout} />
              </section>
            );
          })}
        </SheetPart>
      )}
    </>
  );
}
