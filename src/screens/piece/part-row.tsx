import type { Part, Piece } from '../../store/records/piece.ts';
import { PartEditor } from './part-editor.tsx';
import { PartShape } from './part-shape.tsx';
import { PartWords } from './part-words.tsx';

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
        <PartWords part={part} />
      </button>
      {open && <PartEditor piece={piece} part={part} common={common} onOpen={onOpen} />}
    </li>
  );
}
