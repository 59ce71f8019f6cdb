import { clearOf } from '../../core/breakdown/clear-stretches.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { Drawing, type Hatch } from '../../ui/drawing/drawing.tsx';
import { howMany } from '../../ui/how-many.ts';
import { units } from '../../ui/units.ts';
import type { BoardSheet, SheetBlank } from './board-sheet.ts';

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

const say = (mm: number) => `${formatLength(mm, units.value)} ${units.value.unit}`;

/** One board to scale from its chalked end: blanks with their letters, strips, what is lost, and where each crosscut lies. */
export function BoardDrawing({ sheet, mark, ripKerf, longest }: Props) {
  const { board, blanks, crosscuts } = sheet;
  const scale = (width - left - 4) / longest;
  const height = board.width * scale;
  const ends = crosscuts.map(({ place, at }) => ({ place, text: formatLength(at, units.value) }));
  const rows = placed(ends.map(({ place, text }) => ({ x: left + place * scale, width: text.length * 6.6 + 4 })));
  const deep = Math.max(0, ...rows) + 1;
  const chalk = mark.slice(0, 5);
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
            <rect width={board.length * scale} height={height} class="wood" />
            <Lost sheet={sheet} scale={scale} hatch={hatch} />
            {blanks.map((one) => {
              const { offset = 0, width: across = board.width } = clearOf(board, one.blank) ?? {};
              return <BlankDrawing width={across} {...{ one, offset, scale, ripKerf, hatch }} />;
            })}
          </g>
          {ends.map(({ place, text }, n) => {
            const x = left + place * scale;
            const y = top + height + 15 + (rows[n] ?? 0) * 15;
            return (
              <g>
                <path d={`M${x} ${top - 3}V${y - 10}`} class="outline" stroke-width="1.5" />
                <text x={x + 1} y={y} font-size="12" text-anchor="end">
                  {text}
                </text>
              </g>
            );
          })}
        </>
      )}
    </Drawing>
  );
}

/** What lies outside the clear stretches. */
function Lost({ sheet: { board }, scale, hatch }: { sheet: BoardSheet; scale: number; hatch: Hatch }) {
  if (!board.clear) return null;
  return (
    <>
      <rect width={board.length * scale} height={board.width * scale} fill={hatch.waste} />
      {board.clear.map(({ start, length, offset, width: across }) => (
        <rect x={start * scale} y={offset * scale} width={length * scale} height={across * scale} class="wood" />
      ))}
    </>
  );
}

interface BlankProps {
  one: SheetBlank;
  offset: number;
  width: number;
  scale: number;
  ripKerf: number;
  hatch: Hatch;
}

function BlankDrawing({ one: { blank, letter, strips }, offset, width: across, scale, ripKerf, hatch }: BlankProps) {
  const long = blank.length * scale;
  let y = 0;
  return (
    <g transform={`translate(${blank.start * scale} ${offset * scale})`}>
      <rect width={long} height={across * scale} class="wood" />
      <rect width={long} height={across * scale} fill={hatch.waste} />
      {strips.map(({ strip }) => {
        const at = y;
        y += (strip.width + ripKerf) * scale;
        const box = { y: at, width: long, height: strip.width * scale };
        return (
          <g>
            <rect {...box} class="wood" />
            <rect {...box} fill={strip.spoilt ? hatch.waste : hatch.longGrain} />
          </g>
        );
      })}
      <text x={long / 2} y={-offset * scale - 5} font-size="14" text-anchor="middle">
        {letter}
      </text>
    </g>
  );
}

/** The row in which each label stands, right edges at `x`, so that none runs into another. */
function placed(labels: readonly { readonly x: number; readonly width: number }[]): number[] {
  const ends: number[] = [];
  return labels.map(({ x, width: long }) => {
    const free = ends.findIndex((end) => x - long >= end);
    const row = free < 0 ? ends.length : free;
    ends[row] = x;
    return row;
  });
}

function inWords({ board, blanks, leftover }: BoardSheet, mark: string): string {
  const each = blanks.map(
    ({ letter, blank }) =>
      `blank ${letter} from ${say(blank.start)} to ${say(blank.start + blank.length)}, ${howMany(blank.strips.length, 'strip')}`,
  );
  const rest = leftover > 0 ? `; ${say(leftover)} left` : '';
  return `Board ${mark}, ${say(board.width)} by ${say(board.length)}, from the chalked end: ${each.join('; ')}${rest}.`;
}
