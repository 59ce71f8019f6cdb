import { offerUndo } from '../../app/notices.ts';
import { type PartSize, partLimits, partName } from '../../core/lumber/check-part.ts';
import { pieces } from '../../store/pieces.ts';
import type { Part, Piece } from '../../store/records/piece.ts';
import { Button } from '../../ui/button.tsx';
import { SettledLength, SettledNumber, SettledText } from '../../ui/settled.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import { CutChoice, KindChoice } from './part-choices.tsx';
import { PartDoubts } from './part-doubts.tsx';
import { changePart, putBack, withCopy, withoutPart } from './piece-edits.ts';
import { SidePicks } from './side-picks.tsx';

interface Props {
  piece: Piece;
  part: Part;
  common: readonly string[];
  onOpen(partId: string): void;
}

/** Everything about one part, kept as it is typed. */
export function PartEditor({ piece, part, common, onOpen }: Props) {
  // A write that fails is kept and shown by the shell.
  const edit = (change: (now: Piece) => Piece, then = () => {}) =>
    void pieces.change(piece.id, change).then(then, () => {});
  const set = (change: Partial<Part>) => edit((now) => changePart(now, part.id, change));
  const size = (field: PartSize) => ({
    value: part[field],
    limits: partLimits[field],
    onAccept: (value: number) => set({ [field]: value }),
  });
  return (
    <div class="card">
      <SettledText label="Name" value={part.name} check={partName} onAccept={(name) => set({ name })} />
      <div class="fields">
        <SettledNumber label="How many" unit="count" {...size('quantity')} />
        <SettledLength label="Length, along the grain" {...size('length')} />
        <SettledLength label="Width" {...size('width')} />
        <SettledLength label="Thickness" {...size('thickness')} />
      </div>
      <PartDoubts part={part} />
      <KindChoice value={part.panel ? 'panel' : 'solid'} onInput={(kind) => set({ panel: kind === 'panel' })} />
      <SpeciesPick label="Wood" value={part.species} first={common} onInput={(species) => set({ species })} />
      <CutChoice value={part.cut ?? 'flat'} onInput={(cut) => set({ cut })} />
      <h2>What gets the finish</h2>
      <SidePicks piece={piece} part={part} />
      <div class="buttons">
        <Button
          onClick={() => {
            const id = crypto.randomUUID();
            edit(
              (now) => withCopy(now, part.id, id),
              () => onOpen(id),
            );
          }}
        >
          Duplicate
        </Button>
        <Button
          onClick={() => {
            let before = piece;
            edit(
              (now) => {
                before = now;
                return withoutPart(now, part.id);
              },
              () => offerUndo(`${part.name} deleted.`, () => edit((now) => putBack(now, before, part.id))),
            );
          }}
        >
          Delete
        </Button>
      </div>
    </div>
  );
}
