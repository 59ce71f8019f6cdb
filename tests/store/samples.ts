import type { Board } from '../../src/store/records/board.ts';
import type { Fields } from '../../src/store/records/record.ts';

export function aBoard(given: Partial<Fields<Board>>): Fields<Board> {
  return {
    chalk: 'A',
    species: 'cherry, black',
    thickness: { quarters: 4 },
    width: 180,
    length: 2440,
    state: 'rack',
    ...given,
  };
}
