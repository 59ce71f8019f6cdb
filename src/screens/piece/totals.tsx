import { boardFeet, m3 } from '../../core/answer/quantity.ts';
import { partsVolume } from '../../core/lumber/parts-volume.ts';
import { partCount } from '../../store/records/part-count.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Amount } from '../../ui/amount.tsx';
import { Answer } from '../../ui/answer.tsx';
import { howMany } from '../../ui/how-many.ts';
import { units } from '../../ui/units.ts';

/** How much finished wood the parts hold. */
export function Totals({ piece }: { piece: Piece }) {
  const volume = partsVolume(piece.parts);
  const amounts = [boardFeet(volume.boardFeet.value), m3(volume.cubicMetres.value)] as const;
  const [first, second] = units.value.unit === 'in' ? amounts : [amounts[1], amounts[0]];
  return (
    <Answer
      label={`Finished wood in ${howMany(partCount(piece), 'part')}`}
      of={first}
      working={volume.boardFeet.working}
    >
      <span class="soft">
        <Amount of={second} />; the rough wood for it is more
      </span>
    </Answer>
  );
}
