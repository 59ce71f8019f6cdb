import { useRef, useState } from 'preact/hooks';
import type { ClearStretch } from '../../core/breakdown/problem-types.ts';
import type { Board, Defect } from '../../store/records/board.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { sayLength } from '../../ui/say-length.ts';
import { markedRectangle } from './marked-rectangle.ts';

type Rectangle = Omit<Defect, 'kind'>;

interface Props {
  board: Board;
  clear: readonly ClearStretch[];
  onMark(rectangle: Rectangle): void;
}

const sheet = { width: 328, height: 112 };
const face = { width: 326, height: 110 };

/** The board's face: a stroke of the thumb marks a rectangle on it, a tap a knot. Clear stretches are outlined. */
export function DefectDrawing({ board, clear, onMark }: Props) {
  const { width, farWidth = width, length, defects: marks = [] } = board;
  const along = face.width / length;
  const across = face.height / Math.max(width, farWidth);
  const from = useRef<{ x: number; y: number } | undefined>(undefined);
  const [drawn, setDrawn] = useState<Rectangle>();

  const at = ({ clientX, clientY, currentTarget }: PointerEvent) => {
    const shown = ((currentTarget as Element).firstElementChild as Element).getBoundingClientRect();
    const perPixel = sheet.width / shown.width;
    return {
      x: ((clientX - shown.left) * perPixel - 1) / along,
      y: ((clientY - shown.top) * perPixel - 1) / across,
    };
  };
  const stroke = (event: PointerEvent) => from.current && markedRectangle(board, from.current, at(event));
  const leave = () => {
    from.current = undefined;
    setDrawn(undefined);
  };

  const alternative = `The board’s face, ${sayLength(length)} long. ${
    marks
      .map(({ kind, start, length: size }) => `${kind} from ${sayLength(start)} to ${sayLength(start + size)}`)
      .join('; ') || 'Nothing marked'
  }. Clear: ${clear.map((one) => `${sayLength(one.length)} by ${sayLength(one.width)}`).join('; ') || 'nothing'}.`;
  const outline = `M0 0H${face.width}V${farWidth * across}L0 ${width * across}Z`;
  const place = ({ start, length: size, offset, width: deep }: Rectangle) => ({
    x: start * along,
    y: offset * across,
    width: size * along,
    height: deep * across,
  });
  return (
    <figure>
      <div
        class="marking"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          from.current = at(event);
        }}
        onPointerMove={(event) => setDrawn(stroke(event))}
        onPointerUp={(event) => {
          const rectangle = stroke(event);
          if (rectangle) onMark(rectangle);
          leave();
        }}
        onPointerCancel={leave}
      >
        <Drawing width={sheet.width} height={sheet.height} alternative={alternative}>
          {(hatch) => (
            <g transform="translate(1 1)">
              <path d={outline} class="wood" />
              <path d={outline} fill={hatch.longGrain} />
              {clear.map((one) => (
                <rect {...place(one)} class="outline" stroke-dasharray="5 3" />
              ))}
              {marks.map((one) => [
                <rect {...place(one)} class="wood" />,
                <rect {...place(one)} fill={hatch.waste} stroke="var(--ink)" />,
              ])}
              {drawn && <rect {...place(drawn)} class="outline signal" stroke-width="2" />}
            </g>
          )}
        </Drawing>
      </div>
      <figcaption class="soft small">
        Near end at the left, left edge on top, {Math.max(1, Math.round(across / along))} times as wide. Draw with the
        thumb; a tap marks a small one.
      </figcaption>
    </figure>
  );
}
