import type { Part } from '../../store/records/piece.ts';

const room = { width: 76, height: 40 };

/** A part's face, to the same scale as all others of the piece: a slip in a size sticks out. The sizes stand beside it in words. */
export function PartShape({ part, among }: { part: Part; among: readonly Part[] }) {
  const scale = Math.min(
    room.width / Math.max(...among.map(({ length }) => length)),
    room.height / Math.max(...among.map(({ width }) => width)),
  );
  const width = Math.max(2, part.length * scale);
  const height = Math.max(2, part.width * scale);
  const grain = [0.3, 0.62].map((at) => `M${width * at * 0.4} ${height * at}h${width * 0.5}`);
  return (
    <svg class="drawing part-shape" viewBox={`-1 -1 ${room.width + 2} ${room.height + 2}`} aria-hidden="true">
      <rect class="wood" width={width} height={height} />
      <path class="thin" d={grain.join('')} />
    </svg>
  );
}
