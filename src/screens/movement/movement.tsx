import { useState } from 'preact/hooks';
import { useOne } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { pieces } from '../../store/pieces.ts';
import { Choice, optionsOf } from '../../ui/fields.tsx';
import { Screen } from '../../ui/screen.tsx';
import { PieceList } from '../piece/piece-list.tsx';
import { questions } from '../questions.ts';
import { Joints } from './joints.tsx';
import './movement.css';
import { MovingParts } from './moving-parts.tsx';
import { ScrewDepth } from './screw-depth.tsx';
import { SeasonsCard } from './seasons-card.tsx';
import { seasonsOfPiece } from './seasons-of-piece.ts';
import { useStock } from './use-stock.ts';

const views = optionsOf({ joints: 'Joints', parts: 'Parts', screws: 'Screws' });

type View = (typeof views)[number]['value'];

const viewQuestions: Record<View, string> = {
  joints: 'What may be glued, what must float?',
  parts: 'How much room must a part have?',
  screws: 'How deep may the screw go?',
};

/** Wood movement of one piece. */
export default function MovementScreen({ id }: { id: string }) {
  const piece = useOne(pieces, id);
  const stock = useStock(piece);
  const [view, setView] = useState<View>('joints');
  if (piece === null) return <PieceList screen="movement" kicker="Movement" />;
  if (piece === undefined || stock === undefined) return null;
  const { parts } = piece;
  const seasons = seasonsOfPiece(piece, shop.value, stock, Date.now());
  const moisture = isProblem(seasons) ? undefined : seasons.value;
  return (
    <Screen
      question={parts.length === 0 ? questions.movement : viewQuestions[view]}
      kicker={`Movement · ${piece.name}`}
      action={
        <a class={`button big ${parts.length === 0 ? 'now' : ''}`} href={routeTo('piece', piece.id)}>
          {parts.length === 0 ? 'List its parts' : 'Its parts'}
        </a>
      }
    >
      {parts.length === 0 ? (
        <p>Each joint gets its verdict: glue it, or let it float.</p>
      ) : (
        <>
          <Choice<View> label="Look at" value={view} options={views} onInput={setView} />
          {view === 'screws' && <ScrewDepth pieceId={piece.id} />}
          {moisture && view === 'joints' && <Joints piece={piece} seasons={moisture} />}
          {moisture && view === 'parts' && <MovingParts parts={parts} seasons={moisture} />}
          {view !== 'screws' && <SeasonsCard piece={piece} seasons={seasons} />}
        </>
      )}
    </Screen>
  );
}
