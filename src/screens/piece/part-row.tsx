import type { Part, Piece } from '../../store/records/piece.ts';
import { Length } from '../../ui/length.tsx';
import { speciesName } from '../../ui/species-name.ts';
import { PartEditor } from './part-editor.tsx';
import { PartShape } from './part-shape.tsx';

interface Props {
  piece: Piece;
  part: Part;
  /** Species to list on top. */
  common: readonly string[];
  open: boolean;
  onToggle(): void;
  onOpen(partId: string): void;
}

/** One part in the list; a tap opens its entries below it. */
export function PartRow({ piece, part, common, open, onToggle, onOpen }: Props) {
  return (
    <li class="part">
      <button type="button" aria-expanded={open} onClick={onToggle}>
        <PartShape part={part} among={piece.parts} />
        <span>
          <b>
            {part.name}
            {part.quantity > 1 && ` × ${part.quantity}`}
          </b>
          <span>
            <Length mm={part.length} bare /> × <Length mm={part.width} bare /> × <Length mm={part.thickness} />
          </span>
          <span class="soft small">
            {speciesName(part.species)}, {part.panel ? 'panel' : 'solid'}
            {part.cut && part.cut !== 'flat' && `, ${part.cut}-sawn`}
          </span>
        </span>
      </button>
      {open && <PartEditor piece={piece} part={part} common={common} onOpen={onOpen} />}
    </li>
  );
}
