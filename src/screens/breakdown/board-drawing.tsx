import { clearOf } from '../../core/breakdown/clear-stretches.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { Wood } from '../../ui/drawing/wood.tsx';
import { howMany } from '../../ui/how-many.ts';
import { sayLength } from '../../ui/say-length.ts';
import { units } from '../../ui/units.ts';
import type { BoardSheet } from './board-sheet.ts';

interface Props {
  sheet: BoardSheet;
  mark: string;
  ripKerf: number;
  /** Length of the longest board, so that all are drawn to one scale. */
  longest: number;
}

const width = 328;
const left = 46;
const top = 18;

/** One board to scale from its chalked end: blanks with their letters, strips, what is lost, and where each crosscut lies. */
export function BoardDrawing({ sheet, mark, ripKerf, longest }: Props) {
  const { board, blanks, crosscuts } = sheet;
  const scale = (width - left - 4) / longest;
  const height = board.width * scale;
  const ends = inRows(
    crosscuts.map(({ place, at }) => ({ x: left + place * scale, text: formatLength(at, units.value) })),
  );
  const deep = Math.max(1, ...ends.map(({ row }) => row + 1));
  const chalk = mark.slice(0, 5);
  const box = (start: number, length: number, offset: number, across: number) => ({
    x: start * scale,
    width: length * scale,
    y: offset * scale,
    height: across * scale,
  });
  return (
    <Drawing
      name={`Board ${mark}`}
      width={width}
      height={top + height + 6 + deep * 15}
      alternative={inWords(sheet, mark)}
    >
      {(hatch) => (
        <>
          <text x={left / 2 - 4} y={top + height / 2 + 5} text-anchor="middle" font-size={chalk.length > 3 ? 11 : 15}>
            {chalk}
          </text>
          <path d={`M${left - 5} ${top}v${height}`} class="outline" stroke-width="3" />
          <g transform={`translate(${left} ${top})`}>
            <Wood {...box(0, board.length, 0, board.width)} hatch={board.clear && hatch.waste} />
            {board.clear?.map(({ start, length, offset, width: across }) => (
              <Wood {...box(start, length, offset, across)} />
            ))}
            {blanks.map(({ blank, letter, strips }) => {
              const { start, length } = blank;
              const { offset = 0, width: across = board.width } = clearOf(board, blank) ?? {};
              let edge = offset;
              return (
                <>
                  <Wood {...box(start, length, offset, across)} hatch={hatch.waste} />
                  {strips.map(({ strip: { width: rip, spoilt } }) => {
                    const from = edge;
                    edge += rip + ripKerf;
                    return <Wood {...box(start, length, from, rip)} hatch={spoilt ? hatch.waste : hatch.longGrain} />;
                  })}
                  <text x={(start + length / 2) * scale} y="-5" font-size="14" text-anchor="middle">
                    {letter}
                  </text>
                </>
              );
            })}
          </g>
          {ends.map(({ x, row, text }) => {
            const y = top + height + 15 + row * 15;
            return (
              <>
                <path d={`M${x} ${top - 3}V${y - 10}`} class="outline" stroke-width="1.5" />
                <text x={x + 1} y={y} font-size="12" text-anchor="end">
                  {text}
                </text>
              </>
            );
          })}
        </>
      )}
    </Drawing>
  );
}

/** Labels with the row in which each stands, right edges at `x`, so that none runs into another. */
function inRows<L extends { readonly x: number; readonly text: string }>(labels: readonly L[]) {
  const ends: number[] = [];
  return labels.map((label) => {
    const free = ends.findIndex((end) => label.x - label.text.length * 7.6 - 4 >= end);
    const row = free < 0 ? ends.length : free;
    ends[row] = label.x;
    return { ...label, row };
  });
}

function inWords({ board, blanks, leftover }: BoardSheet, mark: string): string {
  const each = blanks.map(
    ({ letter, blank }) =>
      `blank ${letter} from ${sayLength(blank.start)} to ${sayLength(blank.start + blank.length)}, ${howMany(blank.strips.length, 'strip')}`,
  );
  const rest = leftover > 0 ? `; ${sayLength(leftover)} left` : '';
  return `Board ${mark}, ${sayLength(board.width)} by ${sayLength(board.length)}, from the chalked end: ${each.join('; ')}${rest}.`;
}
