import { useLive } from '../../app/live.ts';
import { kinds } from '../../store/records/kinds.ts';
import { Button } from '../../ui/button.tsx';
import { Screen } from '../../ui/screen.tsx';
import { PartShape } from '../piece/part-shape.tsx';
import { PartWords } from '../piece/part-words.tsx';
import { PieceList } from '../piece/piece-list.tsx';
import { Totals } from '../piece/totals.tsx';
import { PastChecks } from '../square/past-checks.tsx';
import { CutsOnSheet } from './cuts-on-sheet.tsx';
import { FinishOnSheet } from './finish-on-sheet.tsx';
import { GlueOnSheet } from './glue-on-sheet.tsx';
import { JointsOnSheet } from './joints-on-sheet.tsx';
import { MillingOnSheet } from './milling-on-sheet.tsx';
import { readSheet, type SheetRecords } from './read-sheet.ts';
import { SheetPart } from './sheet-part.tsx';
import '../../ui/steps/step-flow.css';
import '../breakdown/breakdown.css';
import '../glue/glue.css';
import '../movement/movement.css';
import '../piece/piece.css';
import './sheet.css';

/** All that is known of one piece, to be printed: the browser makes the paper, or a PDF, of what stands here. */
export default function SheetScreen({ id }: { id: string }) {
  const records = useLive(kinds, () => readSheet(id), id);
  if (!records) return null;
  const { piece } = records;
  return piece ? <Sheet of={{ ...records, piece }} /> : <PieceList screen="sheet" kicker="Sheet" />;
}

function Sheet({ of }: { of: SheetRecords }) {
  const { piece, finish } = of;
  return (
    <Screen
      question={piece.name}
      kicker={`Sheet of ${new Date().toLocaleDateString([], { dateStyle: 'long' })}`}
      action={
        <Button look="big now" onClick={() => window.print()}>
          Print or save as PDF
        </Button>
      }
    >
      <div class="sheet">
        <SheetPart title="Parts" missing="None listed yet.">
          {piece.parts.length > 0 && (
            <>
              <Totals piece={piece} />
              <ul class="parts">
                {piece.parts.map((part) => (
                  <li>
                    <PartShape part={part} among={piece.parts} />
                    <PartWords part={part} />
                  </li>
                ))}
              </ul>
            </>
          )}
        </SheetPart>
        <CutsOnSheet of={of} />
        <MillingOnSheet of={of} />
        <JointsOnSheet piece={piece} />
        <GlueOnSheet of={of} />
        <PastChecks pieceId={piece.id} />
        <FinishOnSheet finish={finish} />
      </div>
    </Screen>
  );
}
