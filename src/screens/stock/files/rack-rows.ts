import { isProblem, type Outcome, type Problem, problem } from '../../../core/answer/problem.ts';
import { nextChalkMark } from '../../../core/lumber/chalk-mark.ts';
import { parseRackCsv } from '../../../core/lumber/parse-rack-csv.ts';
import type { RackRow } from '../../../core/lumber/rack-row.ts';
import type { Board, BoardState } from '../../../store/records/board.ts';
import type { Fields } from '../../../store/records/record.ts';
import { speciesById } from '../../../tables/species.ts';
import { plainMark } from '../board-form.ts';
import { latestMoisture } from '../rack-filter.ts';
import { stateNames } from '../state-names.ts';
import { speciesFromName } from './species-from-name.ts';

/** A board as a line of the rack list. */
export function rackRow(board: Board): RackRow {
  const moisture = latestMoisture(board);
  return {
    chalkMark: board.chalk,
    species: speciesById(board.species)?.name ?? board.species,
    thickness: board.thickness,
    width: board.width,
    ...(board.farWidth !== undefined && { farWidth: board.farWidth }),
    length: board.length,
    ...(Number.isFinite(moisture) && { moisture }),
    state: stateNames[board.state].toLowerCase(),
    note: board.note ?? '',
  };
}

export interface LineProblem {
  readonly line: number;
  readonly problem: Problem;
}

export interface RackImport {
  /** What would be taken in. */
  readonly boards: readonly Fields<Board>[];
  /** What is wrong, by line of the file: none of these lines is among the boards. */
  readonly problems: readonly LineProblem[];
  /** Columns that are none of ours. */
  readonly ignored: readonly string[];
}

/** Reads a rack list against the boards that are there; nothing is stored. `now` dates the moisture readings. */
export function readRackImport(text: string, existing: readonly Board[], now: number): Outcome<RackImport> {
  const file = parseRackCsv(text);
  if (isProblem(file)) return file;
  const taken = new Set(existing.map(({ chalk }) => plainMark(chalk)));
  const problems: LineProblem[] = [...file.problems];
  const good: { row: RackRow; species: string; state: BoardState }[] = [];
  for (const { line, row } of file.rows) {
    const species = speciesFromName(row.species);
    const state = stateFrom(row.state);
    const wrong = [
      species === undefined && problem('species', `No wood is called “${row.species.slice(0, 40)}”.`),
      state === undefined &&
        problem('state', `“${row.state.slice(0, 40)}” is none of: ${Object.values(stateNames).join(', ')}.`),
      row.chalkMark !== '' &&
        taken.has(plainMark(row.chalkMark)) &&
        problem('chalk mark', 'Another board has this mark.'),
    ].filter((found): found is Problem => found !== false);
    problems.push(...wrong.map((found) => ({ line, problem: found })));
    if (wrong.length === 0 && species !== undefined && state !== undefined) good.push({ row, species, state });
  }
  for (const { row } of good) taken.add(plainMark(row.chalkMark));
  let last = nextChalkMark(existing.map(({ chalk }) => chalk));
  const freeMark = () => {
    while (taken.has(plainMark(last))) last = nextChalkMark([last]);
    taken.add(plainMark(last));
    return last;
  };
  return {
    boards: good.map(({ row, species, state }) => ({
      chalk: row.chalkMark === '' ? freeMark() : row.chalkMark,
      species,
      thickness: row.thickness,
      width: row.width,
      ...(row.farWidth !== undefined && { farWidth: row.farWidth }),
      length: row.length,
      state,
      ...(row.moisture !== undefined && { readings: [{ at: now, percent: row.moisture }] }),
      ...(row.note !== '' && { note: row.note }),
    })),
    problems: problems.toSorted((a, b) => a.line - b.line),
    ignored: file.ignored,
  };
}

/** The state by its name; a list that says nothing means the rack. */
function stateFrom(text: string): BoardState | undefined {
  if (text === '') return 'rack';
  return (Object.keys(stateNames) as BoardState[]).find(
    (state) => state.toLowerCase() === text.toLowerCase() || stateNames[state].toLowerCase() === text.toLowerCase(),
  );
}
