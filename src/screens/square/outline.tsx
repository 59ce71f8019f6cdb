import type { ExaggeratedOutline } from '../../core/square/exaggerated-outline.ts';
import type { Point, Quadrilateral } from '../../core/square/quadrilateral.ts';
import type { CornerName } from '../../core/square/readings.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';

const width = 328;
const edge = 34;
const names: readonly CornerName[] = ['A', 'B', 'C', 'D'];

/** The piece to scale, its error exaggerated, over the square that it should be. The front edge is at the bottom. */
export function Outline({ outline, say }: { outline: ExaggeratedOutline; say: string }) {
  const all = names.flatMap((name) => [outline.corners[name], outline.square[name]]);
  const across = [Math.min(...all.map(({ x }) => x)), Math.max(...all.map(({ x }) => x))] as const;
  const deep = [Math.min(...all.map(({ y }) => y)), Math.max(...all.map(({ y }) => y))] as const;
  const scale = Math.min((width - 2 * edge) / (across[1] - across[0]), 240 / (deep[1] - deep[0]));
  const left = (width - scale * (across[1] - across[0])) / 2;
  const height = scale * (deep[1] - deep[0]) + 2 * edge;
  const at = ({ x, y }: Point): Point => ({
    x: left + scale * (x - across[0]),
    y: height - edge - scale * (y - deep[0]),
  });
  const path = (shape: Quadrilateral) =>
    `${names.map((name, n) => `${n === 0 ? 'M' : 'L'}${at(shape[name]).x.toFixed(1)} ${at(shape[name]).y.toFixed(1)}`).join('')}Z`;
  const middle = { x: width / 2, y: height / 2 };
  return (
    <figure>
      <Drawing width={width} height={height} alternative={say}>
        {(hatch) => {
          const { A, B, C, D } = outline.corners;
          return (
            <>
              <path d={path(outline.corners)} class="wood" stroke-width="2.5" />
              <path d={path(outline.corners)} fill={hatch.longGrain} />
              <path d={path(outline.square)} class="thin" stroke-dasharray="5 4" />
              {[
                [A, C],
                [B, D],
              ].map(([from, to]) => {
                const start = at(from as Point);
                const end = at(to as Point);
                return <path d={`M${start.x} ${start.y}L${end.x} ${end.y}`} class="thin" />;
              })}
              {names.map((name) => {
                const corner = at(outline.corners[name]);
                return (
                  <text
                    x={corner.x + (corner.x < middle.x ? -13 : 13)}
                    y={corner.y + (corner.y < middle.y ? -8 : 18)}
                    text-anchor="middle"
                    font-size="16"
                  >
                    {name}
                  </text>
                );
              })}
            </>
          );
        }}
      </Drawing>
      <figcaption class="soft small">
        {outline.factor > 1
          ? `To scale, its error drawn ${outline.factor} times as large. Dashed: the square it should be.`
          : 'To scale. Dashed: the square it should be.'}{' '}
        The front edge A to B is at the bottom.
      </figcaption>
    </figure>
  );
}
