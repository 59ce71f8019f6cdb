import { isProblem, type Outcome, problem } from '../../../core/answer/problem.ts';
import { nextChalkMark } from '../../../core/lumber/chalk-mark.ts';
import { type LineProblem, parseRackCsv } from '../../../core/lumber/parse-rack-csv.ts';
import type { RackRow } from '../../../core/lumber/rack-columns.ts';
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
    ...board,
    species: speciesById(board.species)?.name ?? board.species,
    ...(Number.isFinite(moisture) && { moisture }),
    state: stateNames[board.state].toLowerCase(),
  };
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
  /** Marks, and where they stand. */
  const taken = new Map(existing.map(({ chalk }) => [plainMark(chalk), 'in the rack']));
  const problems: LineProblem[] = [...file.problems];
  const boards: Fields<Board>[] = [];
  for (const { line, row } of file.rows) {
    const { moisture, ...sizes } = row;
    const species = speciesFromName(row.species);
    const state = stateFrom(row.state);
    const where = row.chalk === '' ? undefined : taken.get(plainMark(row.chalk));
    const wrong = (field: string, text: string) => problems.push({ line, problem: problem(field, text) });
    if (!species) wrong('species', `No wood is called “${row.species.slice(0, 40)}”.`);
    if (!state) wrong('state', `“${row.state.slice(0, 40)}” is none of: ${Object.values(stateNames).join(', ')}.`);
    if (where) wrong('chalk mark', `The mark ${row.chalk} stands ${where} already.`);
    if (!species || !state || where) continue;
    taken.set(plainMark(row.chalk), `on line ${line}`);
    boards.push({
      ...sizes,
      species,
      state,
      ...(moisture !== undefined && { readings: [{ at: now, percent: moisture }] }),
    });
  }
  let last = nextChalkMark(existing.map(({ chalk }) => chalk));
  const freeMark = () => {
    while (taken.has(plainMark(last))) last = nextChalkMark([last]);
    taken.set(plainMark(last), '');
    return last;
  };
  return {
    boards: boards.map((board) => ({ ...board, chalk: board.chalk || freeMark() })),
    problems: problems.sort((a, b) => a.line - b.line),
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
