import { useLive } from '../../app/live.ts';
import { glueups } from '../../store/glueups.ts';
import { pieces } from '../../store/pieces.ts';
import { DayPlanScreen } from './day-plan-screen.tsx';
import './glue.css';
import { ListScreen } from './list-screen.tsx';
import { RunScreen } from './run-screen.tsx';
import { SetupScreen } from './setup-screen.tsx';

async function find(id: string) {
  const [glueup, piece] = await Promise.all([glueups.get(id), pieces.get(id)]);
  return { glueup, piece };
}

/** All glue-ups; or the next one of a piece; or one that runs: the address names which. */
export default function GlueScreen({ id }: { id: string }) {
  const found = useLive(['glueup', 'piece'], () => find(id), id);
  if (id === 'plan') return <DayPlanScreen />;
  if (id === '') return <ListScreen />;
  if (!found) return null;
  if (found.glueup) return <RunScreen glueup={found.glueup} />;
  if (found.piece || id === 'new') return <SetupScreen key={id} piece={found.piece} />;
  // It was deleted, here or in another tab.
  return <ListScreen />;
}
