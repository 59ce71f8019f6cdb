import { boardFeet, m3 } from '../../core/answer/quantity.ts';
import { partsVolume } from '../../core/lumber/parts-volume.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Amount } from '../../ui/amount.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';

/** How much finished wood the parts hold. */
export function Totals({ piece }: { piece: Piece }) {
  const volume = partsVolume(piece.parts);
  const count = piece.parts.reduce((sum, { quantity }) => sum + quantity, 0);
  const amounts = [<Amount of={boardFeet(volume.boardFeet.value)} />, <Amount of={m3(volume.cubicMetres.value)} />];
  const [first, second] = units.value.unit === 'in' ? amounts : amounts.reverse();
  return (
    <div class="answer" aria-live="polite">
      <span class="soft">
        Finished wood in {count} {count === 1 ? 'part' : 'parts'}
      </span>
      <span class="figure">{first}</span>
      <span class="soft">{second}; the rough wood for it is more</span>
      <ShowWorking of={volume.boardFeet.working} />
    </div>
  );
}
