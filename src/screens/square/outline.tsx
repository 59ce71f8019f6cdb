import type { ExaggeratedOutline } from '../../core/square/exaggerated-outline.ts';
import type { Quadrilateral } from '../../core/square/quadrilateral.ts';
import { type CornerName, cornerNames, type LineName, lineNames } from '../../core/square/readings.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import {
  arrowLength,
  drawingWidth,
  type PlacedOutline,
  placeArrow,
  placeLine,
  placeOutline,
  turned,
} from './place-outline.ts';

/** A corner that has to move along the line to another. */
export interface Arrow {
  readonly corner: CornerName;
  readonly other: CornerName;
  readonly towards: boolean;
}

interface Props {
  outline: ExaggeratedOutline;
  /** What the drawing shows, in words. */
  say: string;
  /** What was read on each line, as it is written along it. */
  values: Readonly<Partial<Record<LineName, string>>>;
  arrows: readonly Arrow[];
  /** The lines that are being measured, or have to be measured again. */
  lit: readonly LineName[];
  /** A line was tapped. Its entry does the same, so the lines stay out of the tab order. */
  onLine(line: LineName): void;
}

/** The piece to scale, its error exaggerated, over the square that it should be. */
export function Outline({ outline, say, values, arrows, lit, onLine }: Props) {
  const placed = placeOutline(outline);
  return (
    <figure class="square-outline">
      <Drawing
        name={Object.keys(values).length > 0 ? 'Squareness' : ''}
        width={drawingWidth}
        height={placed.height}
        alternative={say}
      >
        {(hatch) => (
          <>
            <path d={closed(placed.corners)} class="wood" stroke="none" />
            <path d={closed(placed.corners)} fill={hatch.longGrain} />
            {outline.factor > 1 && <path d={closed(placed.square)} class="thin" stroke-dasharray="5 4" />}
            {lineNames.map((line) => (
              <Line line={line} placed={placed} value={values[line]} lit={lit.includes(line)} onTap={onLine} />
            ))}
            {cornerNames.map((name) => (
              <Letter name={name} placed={placed} />
            ))}
            {arrows.map(({ corner, other, towards }) => {
              const { from, to } = placeArrow(corner, other, towards, placed);
              const turn = turned(from, to);
              return (
                <path
                  d={`M${-arrowLength} 0H0M-12-8 0 0-12 8`}
                  class="arrow"
                  transform={`translate(${to.x} ${to.y})rotate(${turn})`}
                />
              );
            })}
          </>
        )}
      </Drawing>
      <figcaption class="soft small">
        {outline.factor > 1
          ? `Front edge A–B nearest you. Error drawn ${outline.factor} times; dashed: square.`
          : 'Front edge A–B nearest you. Tap the line you measure.'}
      </figcaption>
    </figure>
  );
}

const closed = (shape: Quadrilateral): string =>
  `M${cornerNames.map((name) => `${shape[name].x.toFixed(1)} ${shape[name].y.toFixed(1)}`).join('L')}Z`;

interface LineProps {
  line: LineName;
  placed: PlacedOutline;
  value: string | undefined;
  lit: boolean;
  onTap(line: LineName): void;
}

function Line({ line, placed, value, lit, onTap }: LineProps) {
  const { from, to, x, y, turn } = placeLine(line, placed);
  const path = `M${from.x} ${from.y}L${to.x} ${to.y}`;
  return (
    <>
      <path d={path} class={`line${value === undefined ? ' open' : ''}${lit ? ' lit' : ''}`} />
      {value !== undefined && (
        <text x={x} y={y} text-anchor="middle" font-size="14" transform={`rotate(${turn.toFixed(1)} ${x} ${y})`}>
          {value}
        </text>
      )}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the entry below is the same thing for the keyboard */}
      <path d={path} class="tap" data-line={line} onClick={() => onTap(line)} />
    </>
  );
}

function Letter({ name, placed }: { name: CornerName; placed: PlacedOutline }) {
  const { x, y } = placed.corners[name];
  return (
    <text
      x={x + ('AD'.includes(name) ? -14 : 14)}
      y={y + ('AB'.includes(name) ? 18 : -8)}
      text-anchor="middle"
      font-size="16"
    >
      {name}
    </text>
  );
}
