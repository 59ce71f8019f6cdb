import { useState } from 'preact/hooks';
import { useLive } from '../../app/live.ts';
import { go } from '../../app/routes.ts';
import { finishes } from '../../store/finishes.ts';
import { pieces } from '../../store/pieces.ts';
import './finish.css';
import { PieceList } from '../piece/piece-list.tsx';
import { findFinish } from './find-finish.ts';
import { PlanScreen } from './plan-screen.tsx';
import { RunScreen } from './run-screen.tsx';

async function readAll(id: string) {
  const [allFinishes, allPieces] = await Promise.all([finishes.all(), pieces.all()]);
  return { ...findFinish(id, allFinishes, allPieces), allPieces };
}

/** How much finish, which cans, and what when: the plan of a piece's finish, and then its steps. */
export default function FinishScreen({ id }: { id: string }) {
  const [again, setAgain] = useState(false);
  const found = useLive(['finish', 'piece'], () => readAll(id), id);
  if (!found) return null;
  const { finish, piece, allPieces } = found;
  const owner = piece ?? allPieces.find((one) => one.id === finish?.pieceId);
  if (finish && !(again && owner))
    return <RunScreen key={finish.id} finish={finish} pieces={allPieces} onAgain={() => setAgain(true)} />;
  if (owner)
    return (
      <PlanScreen
        key={owner.id}
        piece={owner}
        all={allPieces}
        onStarted={() => {
          setAgain(false);
          // The address may name the finish before.
          go('finish', owner.id);
        }}
      />
    );
  return <PieceList screen="finish" kicker="Finish" />;
}
