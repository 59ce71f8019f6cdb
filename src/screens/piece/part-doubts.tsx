import { doubtfulPart } from '../../core/lumber/doubtful-part.ts';
import type { Part } from '../../store/records/piece.ts';
import { Say } from '../../ui/say.tsx';

/** What may be a slip in a part, asked and not refused. */
export function PartDoubts({ part }: { part: Omit<Part, 'id'> | undefined }) {
  return (
    <div aria-live="polite">
      {part &&
        doubtfulPart(part).map((doubt) => (
          <p class="soft">
            <Say phrase={doubt} />
          </p>
        ))}
    </div>
  );
}
