import { Button } from '../../../ui/button.tsx';
import { howMany } from '../../../ui/how-many.ts';
import { Say } from '../../../ui/say.tsx';
import { speciesName } from '../../../ui/species-name.ts';
import { BoardSize } from '../board-size.tsx';
import type { RackImport } from './rack-rows.ts';

interface Props {
  found: RackImport;
  onTake(): void;
  onLeave(): void;
}

/** So many are listed; the rest is counted. */
const fewBoards = 5;
const manyProblems = 50;

/** What a file would bring, and what is wrong with it, line by line, before anything is stored. */
export function ImportPreview({ found, onTake, onLeave }: Props) {
  const { boards, problems, ignored } = found;
  const badLines = new Set(problems.map(({ line }) => line)).size;
  return (
    <section class="answer" aria-label="What the file holds">
      <span class="figure words">{howMany(boards.length, 'board')} can come in</span>
      <span>Nothing is stored yet.</span>
      {ignored.length > 0 && <span class="soft">Columns passed over: {ignored.join(', ')}.</span>}
      {boards.length > 0 && (
        <ul>
          {boards.slice(0, fewBoards).map((board) => (
            <li>
              <b>{board.chalk}</b> {speciesName(board.species)}, <BoardSize board={board} />
            </li>
          ))}
          {boards.length > fewBoards && <li class="soft">and {boards.length - fewBoards} more</li>}
        </ul>
      )}
      {badLines > 0 && (
        <>
          <b>
            {badLines} {badLines === 1 ? 'line stays' : 'lines stay'} out:
          </b>
          <ul aria-label="Problems">
            {problems.slice(0, manyProblems).map(({ line, problem }) => (
              <li class="trouble">
                Line {line}
                {problem.field !== '' && `, ${problem.field}`}: <Say phrase={problem.message} />
              </li>
            ))}
            {problems.length > manyProblems && <li>and {problems.length - manyProblems} more</li>}
          </ul>
          <span class="soft">Fix the file and choose it again, or add the good lines.</span>
        </>
      )}
      <div class="buttons">
        {boards.length > 0 && (
          <Button look={badLines > 0 ? '' : 'now'} onClick={onTake}>
            Add {howMany(boards.length, 'board')}
          </Button>
        )}
        <Button onClick={onLeave}>Leave it</Button>
      </div>
    </section>
  );
}
