import { fastenerDepth } from '../../core/movement/fastener-depth.ts';
import { LengthTask } from './length-task.tsx';

/** How deep to drill for a screw or an insert, and what is left under it; one that would come through is refused. */
export function ScrewDepth({ pieceId }: { pieceId: string }) {
  return (
    <LengthTask
      title="Screw or insert"
      name={`screw-depth-2-${pieceId}`}
      entries={{
        length: ['Length under the head', 32],
        through: ['Goes through', 19, '0 for an insert'],
        counterbore: ['Counterbore', 0],
        thickness: ['Into a part this thick', 22],
        remain: ['Wood to leave under it', 3],
      }}
      find={(lengths) => fastenerDepth(lengths)}
      show={({ depthStop, reach, hole, remaining }) => [
        ['Set the depth stop to', depthStop],
        ['Reaches in', reach],
        ['Hole in the second part', hole],
        ['Wood left under it', remaining],
      ]}
    >
      <p class="soft small">From the tip of the bit, through both parts. Try the stop on scrap first.</p>
    </LengthTask>
  );
}
