import type { Part } from '../../store/records/piece.ts';
import { Length } from '../../ui/length.tsx';
import { speciesName } from '../../ui/species-name.ts';

/** One part: its name, how many, its size, and what it is made of. */
export function PartWords({ part }: { part: Part }) {
  return (
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
  );
}
