import { pieces } from '../../store/pieces.ts';
import type { Part, Piece } from '../../store/records/piece.ts';
import { Pick } from '../../ui/fields.tsx';
import { changeSides } from './piece-edits.ts';
import { pairOf, sideKinds, sidePairs } from './side-pairs.ts';

/** What a part's sides get, kept with the piece. */
export const keepSides = (piece: Piece, partId: string, sides: Part['surfaces']) =>
  pieces.edit(piece.id, (now) => changeSides(now, partId, sides));

/** What a part's faces, edges and ends get, one choice for each pair. */
export function SidePicks({ piece, part }: { piece: Piece; part: Part }) {
  return (
    <>
      {sideKinds.map(({ kind, name }) => (
        <Pick
          label={name}
          value={pairOf(part, kind)}
          options={sidePairs}
          onInput={(pair) =>
            keepSides(piece, part.id, { [kind]: sidePairs.find(({ value }) => value === pair)?.sides })
          }
        />
      ))}
    </>
  );
}
