import { useState } from 'preact/hooks';
import { useLive, useOne } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { boards } from '../../store/boards.ts';
import { pieces } from '../../store/pieces.ts';
import type { Board } from '../../store/records/board.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Screen } from '../../ui/screen.tsx';
import { questions } from '../questions.ts';
import { commonSpecies } from './common-species.ts';
import { NewPiece } from './new-piece.tsx';
import { PartEntry } from './part-entry.tsx';
import { PartRow } from './part-row.tsx';
import './piece.css';
import { PieceList } from './piece-list.tsx';
import { ThisPiece } from './this-piece.tsx';
import { Totals } from './totals.tsx';

/** What is being made, and of which parts. */
export default function PieceScreen({ id }: { id: string }) {
  if (id === '') return <PieceList />;
  return id === 'new' ? <NewPiece /> : <OnePiece id={id} />;
}

function OnePiece({ id }: { id: string }) {
  const piece = useOne(pieces, id);
  const rack = useLive(['board'], () => boards.where('state', 'rack'));
  if (piece === undefined || !rack) return null;
  // It was deleted, here or in another tab.
  return piece ? <Parts piece={piece} rack={rack} /> : <PieceList />;
}

function Parts({ piece, rack }: { piece: Piece; rack: readonly Board[] }) {
  const [open, setOpen] = useState('');
  const common = commonSpecies(piece.parts, rack);
  return (
    <Screen
      question={questions.piece}
      kicker={piece.name}
      action={
        piece.parts.length > 0 && (
          <a class="button big now" href={routeTo('breakdown', piece.id)}>
            Plan the cuts
          </a>
        )
      }
    >
      {piece.parts.length > 0 ? (
        <>
          <Totals piece={piece} />
          <ul class="parts">
            {piece.parts.map((part) => (
              <PartRow
                key={part.id}
                piece={piece}
                part={part}
                common={common}
                open={part.id === open}
                onToggle={() => setOpen(part.id === open ? '' : part.id)}
                onOpen={setOpen}
              />
            ))}
          </ul>
          <div class="buttons">
            <a class="button" href={routeTo('movement', piece.id)}>
              How will it move?
            </a>
            <a class="button" href={routeTo('sheet', piece.id)}>
              Print the sheet
            </a>
          </div>
        </>
      ) : (
        <p>List each part at its finished size: all else comes from it.</p>
      )}
      <PartEntry piece={piece} common={common} />
      <ThisPiece piece={piece} />
    </Screen>
  );
}
