import type { Part, Piece, Sides } from '../../../src/store/records/piece.ts';

export const bare: Sides = ['bare', 'bare'];

export function part(id: string, change: Partial<Part> = {}): Part {
  return {
    id,
    name: id,
    species: 'cherry-black',
    length: 1000,
    width: 200,
    thickness: 20,
    quantity: 1,
    panel: false,
    ...change,
  };
}

export function pieceOf(parts: readonly Part[], change: Partial<Piece> = {}): Piece {
  return {
    id: 'cabinet',
    created: 0,
    updated: 0,
    revision: 1,
    name: 'Cabinet',
    parts,
    joints: [],
    stages: [],
    ...change,
  };
}
