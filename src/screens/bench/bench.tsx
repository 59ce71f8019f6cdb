import { useDraft } from '../../app/draft.ts';
import { useLive } from '../../app/live.ts';
import { routeTo } from '../../app/routes.ts';
import { inHandKey } from '../../store/piece-in-hand.ts';
import { kinds } from '../../store/records/kinds.ts';
import { howMany } from '../../ui/how-many.ts';
import { DoneMark, WaitMark } from '../../ui/marks.tsx';
import { Screen } from '../../ui/screen.tsx';
import { AllAnswers } from './answers.tsx';
import './bench.css';
import { jobThread, type PieceRecords, type StageName } from './job-thread.ts';
import { type BenchRead, readBench } from './read-bench.ts';
import { useLater } from './use-later.ts';

const stageNames: Record<StageName, string> = {
  stock: 'Stock',
  piece: 'Piece',
  breakdown: 'Breakdown',
  mill: 'Mill',
  square: 'Square',
  glue: 'Glue-up',
  finish: 'Finish',
};

/** Home: what to do now, what waits, what is missing, and the way to everything else. */
export default function Bench() {
  const chosen = useDraft<string>(inHandKey, '');
  const bench = useLive(kinds, () => readBench(chosen.value), chosen.value);
  return (
    <Screen question="What now?" kicker="Boardwright" home action={<Places />}>
      {bench && <Job bench={bench} onChoose={chosen.set} />}
    </Screen>
  );
}

/** What needs no piece, in reach of the thumb from the first moment. */
function Places() {
  return (
    <>
      {(['stock', 'square', 'glue'] as const).map((stage) => (
        <a class="button big" href={routeTo(stage)}>
          {stageNames[stage]}
        </a>
      ))}
      <a class="button big" href={routeTo('shop')}>
        Shop
      </a>
    </>
  );
}

function Job({ bench, onChoose }: { bench: BenchRead; onChoose(id: string): void }) {
  const { inHand, allPieces } = bench;
  const { answers, KeepSafe } = useLater(bench);
  return (
    <>
      <AllAnswers bench={bench} later={answers} />
      {inHand ? (
        <>
          <Thread of={inHand} boards={bench.boardCount} />
          <a class="button" href={routeTo('sheet', inHand.piece.id)}>
            Print the sheet
          </a>
        </>
      ) : (
        <FirstVisit bench={bench} />
      )}
      {allPieces.length > 1 && (
        <fieldset class="buttons">
          <legend>Piece in hand</legend>
          {allPieces.map(({ id, name }) => (
            <button type="button" class="button" aria-pressed={id === inHand?.piece.id} onClick={() => onChoose(id)}>
              {name}
            </button>
          ))}
        </fieldset>
      )}
      {KeepSafe && <KeepSafe begun={bench.begun} />}
      <div class="buttons">
        <a class="button" href={routeTo('piece', 'new')}>
          New piece
        </a>
        <a class="button" href={routeTo('data')}>
          Records and demo
        </a>
      </div>
    </>
  );
}

/** One piece's stages from boards to cure. */
function Thread({ of, boards }: { of: PieceRecords; boards: number }) {
  return (
    <nav aria-label={`Stages of ${of.piece.name}`}>
      <h2>{of.piece.name}</h2>
      <ol class="thread">
        {jobThread(of, boards).map((stage) => (
          <li>
            <a href={routeTo(stage.name, stage.id)} class={stage.state}>
              <span class="station">
                {stage.state === 'done' ? <DoneMark /> : stage.state === 'begun' ? <WaitMark /> : null}
              </span>
              <span class="stage">
                <b>{stageNames[stage.name]}</b>
                <span class="soft small">{stage.next}</span>
              </span>
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

/** Before the first piece: what is useful within a minute. */
function FirstVisit({ bench: { boardCount, begun } }: { bench: BenchRead }) {
  return (
    <>
      {!begun && <p>Each of these works at once. All stays on this phone, with or without a signal.</p>}
      <ul class="starts">
        <Start href={routeTo('square')} what="Is it square?" how="Sides and diagonals, or a stick" />
        <Start href={routeTo('glue', 'new')} what="Start a glue clock" how="Open time, clamps, rest" />
        <Start
          href={routeTo('stock')}
          what={boardCount > 0 ? `${howMany(boardCount, 'board')} logged` : 'Boards have come'}
          how="Log them, see what you have"
        />
        <Start href={routeTo('piece', 'new')} what="Make a piece" how="From its parts to the last coat" />
      </ul>
    </>
  );
}

const Start = ({ href, what, how }: { href: string; what: string; how: string }) => (
  <li>
    <a class="answer" href={href}>
      <span class="figure words">{what}</span>
      <span>{how}</span>
    </a>
  </li>
);
