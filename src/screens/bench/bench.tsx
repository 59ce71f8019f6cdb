import { useDraft } from '../../app/draft.ts';
import { useLive } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { boards } from '../../store/boards.ts';
import { finishes } from '../../store/finishes.ts';
import { glueups } from '../../store/glueups.ts';
import { millings } from '../../store/millings.ts';
import { pieces } from '../../store/pieces.ts';
import { plans } from '../../store/plans.ts';
import { kinds } from '../../store/records/kinds.ts';
import type { Piece } from '../../store/records/piece.ts';
import { squares } from '../../store/squares.ts';
import { timers } from '../../store/timers.ts';
import { DoneMark, WaitMark } from '../../ui/marks.tsx';
import { Screen } from '../../ui/screen.tsx';
import './bench.css';
import { DemoOffer } from './demo-offer.tsx';
import { jobThread, nextStage, type StageName } from './job-thread.ts';
import { KeepSafe } from './keep-safe.tsx';
import { RunningTimers } from './running-timers.tsx';

const stageNames: Record<StageName, string> = {
  stock: 'Stock',
  piece: 'Piece',
  breakdown: 'Breakdown',
  mill: 'Mill',
  square: 'Square',
  glue: 'Glue-up',
  finish: 'Finish',
};

const inHand = (all: readonly Piece[], chosen: string | undefined): Piece | undefined =>
  all.find(({ id }) => id === chosen) ??
  all.filter(({ finishedAt }) => finishedAt === undefined).sort((a, b) => b.updated - a.updated)[0] ??
  all[0];

async function readBench(chosen: string | undefined) {
  const [allPieces, allBoards, running] = await Promise.all([pieces.all(), boards.all(), timers.all()]);
  const piece = inHand(allPieces, chosen);
  const ofPiece = piece && {
    plans: await plans.where('pieceId', piece.id),
    millings: await millings.where('pieceId', piece.id),
    squares: await squares.where('pieceId', piece.id),
    glueups: await glueups.where('pieceId', piece.id),
    finishes: await finishes.where('pieceId', piece.id),
  };
  return {
    pieces: allPieces,
    piece,
    boardCount: allBoards.length,
    timers: running.filter(({ doneAt }) => doneAt === undefined),
    thread: piece && ofPiece && jobThread({ boards: allBoards, piece, ...ofPiece }),
  };
}

/** Home: what is next for the piece in hand, what is running, and the way to everything else. */
export default function Bench() {
  const chosen = useDraft<string>('piece-in-hand-1', '');
  const bench = useLive(kinds, () => readBench(chosen.value), chosen.value);
  return (
    <Screen question="What next?" kicker="Boardwright" home action={<Places />}>
      {bench && <Job bench={bench} onChoose={chosen.set} />}
    </Screen>
  );
}

/** What needs no piece, in reach of the thumb from the first moment. */
function Places() {
  return (
    <>
      <a class="button big" href={routeTo('stock')}>
        Stock
      </a>
      <a class="button big" href={routeTo('square')}>
        Square
      </a>
      <a class="button big" href={routeTo('glue')}>
        Glue-up
      </a>
      <a class="button big" href={routeTo('shop')}>
        Shop
      </a>
    </>
  );
}

function Job({ bench, onChoose }: { bench: Awaited<ReturnType<typeof readBench>>; onChoose(id: string): void }) {
  const next = bench.thread && nextStage(bench.thread);
  const { piece } = bench;
  return (
    <>
      <RunningTimers timers={bench.timers} />
      {piece ? (
        <>
          <a
            class={next ? 'answer now next' : 'answer next'}
            href={next ? routeTo(next.name, next.id) : routeTo('piece', piece.id)}
          >
            <span class="soft">{piece.name}</span>
            <span class="figure words">{next ? next.next : 'All stages done'}</span>
            {next && <span>Go to {stageNames[next.name]}</span>}
          </a>
          <nav aria-label={`Stages of ${piece.name}`}>
            <ol class="thread">
              {bench.thread?.map((stage) => (
                <li>
                  <a href={routeTo(stage.name, stage.id)} class={stage.state}>
                    <span class="station">
                      {stage.state === 'done' ? <DoneMark /> : stage.state === 'begun' ? <WaitMark /> : null}
                    </span>
                    <b>{stageNames[stage.name]}</b>
                    <span class="soft small">{stage.next}</span>
                  </a>
                </li>
              ))}
            </ol>
          </nav>
          <a class="button" href={routeTo('sheet', piece.id)}>
            Print the sheet
          </a>
        </>
      ) : (
        <FirstVisit boardCount={bench.boardCount} />
      )}
      <KeepSafe begun={bench.pieces.length > 0 || bench.boardCount > 0} />
      <h2>{bench.pieces.length > 0 ? 'Pieces' : 'More'}</h2>
      {bench.pieces.length > 1 && (
        <div class="buttons">
          {bench.pieces.map(({ id, name }) => (
            <button type="button" class="button" aria-pressed={id === piece?.id} onClick={() => onChoose(id)}>
              {name}
            </button>
          ))}
        </div>
      )}
      <div class="buttons">
        <a class="button" href={routeTo('piece', 'new')}>
          New piece
        </a>
        {!piece && bench.boardCount === 0 && <DemoOffer />}
        <a class="button" href={routeTo('data')}>
          Records and demo
        </a>
      </div>
    </>
  );
}

function FirstVisit({ boardCount }: { boardCount: number }) {
  return (
    <>
      <p>
        From rough boards to a cured finish: this app does the arithmetic of the bench, on this phone alone, with or
        without a signal.
      </p>
      <ul class="starts">
        <li>
          <a class="answer now next" href={routeTo('stock')}>
            <span class="figure words">{boardCount > 0 ? `${boardCount} boards logged` : 'Boards have come'}</span>
            <span>Log them and see what you really have</span>
          </a>
        </li>
        <li>
          <a class="answer next" href={routeTo('square')}>
            <span class="figure words">Is it square?</span>
            <span>Two sides and two diagonals</span>
          </a>
        </li>
        <li>
          <a class="answer next" href={routeTo('piece', 'new')}>
            <span class="figure words">Make a piece</span>
            <span>From its parts to the plan, the milling and the glue</span>
          </a>
        </li>
      </ul>
    </>
  );
}
