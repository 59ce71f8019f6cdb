import { Button } from '../../ui/button.tsx';
import { keepSides, SidePicks } from '../piece/side-picks.tsx';
import type { FormProps } from './form-props.ts';

/** What each part's faces, edges and ends get; kept with the piece. */
export function Sides({ piece }: FormProps) {
  return (
    <details class="card">
      <summary>Which surfaces: shown, inside or bare</summary>
      {piece.parts.map((part) => (
        <fieldset key={part.id} class="sides">
          <legend>{part.name}</legend>
          <div class="fields sides-of">
            <SidePicks piece={piece} part={part} />
          </div>
          <Button
            onClick={() =>
              keepSides(piece, part.id, { faces: ['bare', 'bare'], edges: ['bare', 'bare'], ends: ['bare', 'bare'] })
            }
          >
            All of it bare
          </Button>
        </fieldset>
      ))}
    </details>
  );
}
