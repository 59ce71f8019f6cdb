import { writeDraft } from './drafts.ts';

/** The draft that keeps which piece is in hand: home shows its stages. */
export const inHandKey = 'piece-in-hand-1';

export const takeInHand = (pieceId: string) => writeDraft(inHandKey, pieceId);
