import { isProblem } from '../../core/answer/problem.ts';
import { fastenerDepth } from '../../core/movement/fastener-depth.ts';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { AnswerList } from './answer-list.tsx';
import { useEntries } from './entries.ts';

const names = ['length', 'through', 'counterbore', 'thickness'];

/** How deep to drill for a screw or an insert, and what is left under it; one that would come through is refused. */
export function ScrewDepth({ pieceId }: { pieceId: string }) {
  const entries = useEntries(`screw-depth-1-${pieceId}`, { length: 32, through: 19, counterbore: 0, thickness: 22 });
  if (!entries) return null;
  const { lengths, field } = entries;
  const found = isProblem(lengths) ? lengths : fastenerDepth(lengths);
  return (
    <section class="task" aria-label="Screw or insert">
      <h2>Screw or insert</h2>
      <div class="fields">
        <LengthField label="Length under the head" {...field('length', found)} />
        <LengthField label="Goes through" hint="0 for an insert" {...field('through', found)} />
        <LengthField label="Counterbore" {...field('counterbore', found)} />
        <LengthField label="Into a part this thick" {...field('thickness', found)} />
      </div>
      <AnswerList
        of={found}
        entries={names}
        main={({ depthStop }) => ['Set the depth stop to', depthStop]}
        rest={({ reach, hole, remaining }) => [
          ['It reaches in by', reach],
          ['Hole in the second part', hole],
          ['Wood left under it', remaining],
        ]}
      >
        <p class="soft small">From the tip of the bit, through both parts at once. Try the stop on scrap first.</p>
      </AnswerList>
    </section>
  );
}
