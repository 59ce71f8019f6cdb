import type { Blank, RoughBoard } from '../../core/breakdown/problem-types.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { units } from '../../ui/units.ts';

interface Props {
  board: RoughBoard;
  mark: string;
  blanks: readonly Blank[];
  ripKerf: number;
  partName(id: string): string;
}

const sheet = 328;
const left = 30;

/** One board to scale from its start end: blanks, strips and what is left over. */
export function BoardDrawing({ board, mark, blanks, ripKerf, partName }: Props) {
  const scale = (sheet - left - 2) / board.length;
  const height = Math.max(26, board.width * scale);
  const across = height / board.width;
  const sorted = [...blanks].sort((a, b) => a.start - b.start);
  const say = (mm: number) => `${formatLength(mm, units.value)} ${units.value.unit}`;
  const alternative = `Board ${mark}, ${say(board.width)} by ${say(board.length)}: ${
    sorted
      .map(
        (blank) =>
          `blank from ${say(blank.start)} to ${say(blank.start + blank.length)}, ${blank.strips.length} strips`,
      )
      .join('; ') || 'not used'
  }.`;
  return (
    <Drawing width={sheet} height={height + 20} alternative={alternative}>
      {(hatch) => (
        <>
          <rect x="1" y="1" width={left - 6} height={height} class="wood" />
          <rect x="1" y="1" width={left - 6} height={height} fill={hatch.endGrain} />
          <text x={left / 2 - 2} y={height / 2 + 6} text-anchor="middle" font-size="14">
            {mark}
          </text>
          <g transform={`translate(${left} 1)`}>
            <rect width={board.length * scale} height={height} class="wood" />
            <rect width={board.length * scale} height={height} fill={hatch.waste} />
            {sorted.map((blank) => {
              let y = 0;
              return (
                <g transform={`translate(${blank.start * scale} 0)`}>
                  {blank.strips.map((strip) => {
                    const top = y;
                    y += (strip.width + ripKerf) * across;
                    return (
                      <g>
                        <rect y={top} width={blank.length * scale} height={strip.width * across} class="wood" />
                        <rect
                          y={top}
                          width={blank.length * scale}
                          height={strip.width * across}
                          fill={hatch.longGrain}
                        />
                      </g>
                    );
                  })}
                  <text x="3" y={height / 2 + 4} font-size="11">
                    {[...new Set(blank.strips.map(({ part }) => partName(part)))]
                      .join(', ')
                      .slice(0, Math.floor((blank.length * scale) / 7))}
                  </text>
                  <path d={`M${blank.length * scale} 0v${height + 4}`} class="outline" stroke-width="2" />
                  <text x={blank.length * scale} y={height + 16} font-size="11" text-anchor="end">
                    {formatLength(blank.start + blank.length, units.value)}
                  </text>
                </g>
              );
            })}
          </g>
        </>
      )}
    </Drawing>
  );
}
