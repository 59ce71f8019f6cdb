import { useState } from 'preact/hooks';
import { useLive } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { millings } from '../../store/millings.ts';
import { pieces } from '../../store/pieces.ts';
import { plans } from '../../store/plans.ts';
import { newest } from '../../store/records/newest.ts';
import { planInHand } from '../../store/records/plan-in-hand.ts';
import { Screen } from '../../ui/screen.tsx';
import { PieceList } from '../piece/piece-list.tsx';
import { questions } from '../questions.ts';
import { Begin } from './begin.tsx';
import { MillingRun } from './milling-run.tsx';
import { RunEnd } from './run-end.tsx';

/** The address names a piece, or a run of it. */
async function readMill(id: string) {
  const pieceId = (await millings.get(id))?.pieceId ?? id;
  const piece = await pieces.get(pieceId);
  const run = newest(await millings.where('pieceId', pieceId));
  const plan = planInHand(await plans.where('pieceId', pieceId));
  return { piece, run, plan };
}

/** In which order to mill, step by step: begins a run for the chosen plan, or goes on with the one begun. */
export default function MillScreen({ id }: { id: string }) {
  const mill = useLive(['milling', 'plan', 'piece'], () => readMill(id), id);
  const [look, setLook] = useState<'run' | 'steps' | 'again'>('run');
  if (!mill) return null;
  const { piece, run, plan } = mill;
  if (!piece) return <PieceList screen="mill" kicker="Mill" />;
  if (run && look !== 'again') {
    if (run.finishedAt !== undefined && look !== 'steps') {
      return <RunEnd run={run} piece={piece} onSteps={() => setLook('steps')} onAgain={() => setLook('again')} />;
    }
    return <MillingRun key={run.id} run={run} piece={piece} plan={plan} onFinished={() => setLook('run')} />;
  }
  if (plan) return <Begin piece={piece} plan={plan} onBegun={() => setLook('run')} />;
  return (
    <Screen
      question={questions.mill}
      kicker={`Mill · ${piece.name}`}
      action={
        <a class="button big now" href={routeTo('breakdown', piece.id)}>
          Plan the cuts first
        </a>
      }
    >
      <p>The steps come from the plan of the cuts.</p>
    </Screen>
  );
}
