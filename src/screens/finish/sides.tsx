import { pieces } from '../../store/pieces.ts';
import type { Part, Piece } from '../../store/records/piece.ts';
import { Pick } from '../../ui/fields.tsx';
import { changePart } from '../piece/piece-edits.ts';
import { pairOf, sideKinds, sidePairs } from '../piece/side-pairs.ts';

/** What each part's faces, edges and ends get; kept with the piece. */
export function Sides({ piece }: { piece: Piece }) {
  // From the part as it is stored now: two choices in quick succession must not undo each other. A write that fails is
  // kept and shown by the shell.
  const set = (partId: string, sides: Part['surfaces']) =>
    void pieces
      .change(piece.id, (now) => {
        const before = now.parts.find(({ id }) => id === partId)?.surfaces;
        return changePart(now, partId, { surfaces: { ...before, ...sides } });
      })
      .catch(() => {});
  return (
    <details class="card">
      <summary>Which surfaces: shown, inside or bare</summary>
      {piece.parts.map((part) => (
        <fieldset key={part.id} class="sides">
          <legend>{part.name}</legend>
          <div class="fields sides-of">
            {sideKinds.map(({ kind, name }) => (
              <Pick
                label={name}
                value={pairOf(part, kind)}
                options={sidePairs}
                onInput={(pair) => {
                  const sides = sidePairs.find(({ value }) => value === pair)?.sides;
                  if (sides) set(part.id, { [kind]: sides });
                }}
              />
            ))}
          </div>
          <button
            type="button"
            class="button"
            onClick={() => set(part.id, { faces: ['bare', 'bare'], edges: ['bare', 'bare'], ends: ['bare', 'bare'] })}
          >
            All of it bare
          </button>
        </fieldset>
      ))}
      <p class="soft small">What joints hide is left out where the piece’s joints are set up.</p>
    </details>
  );
}
