import { useEffect, useRef, useState } from 'preact/hooks';
import type { ClearStretch } from '../../core/breakdown/problem-types.ts';
import { formatLength } from '../../core/length/format-length.ts';
import type { Board, Defect } from '../../store/records/board.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { units } from '../../ui/units.ts';
import { markedRectangle } from './marked-rectangle.ts';

interface Props {
  board: Board;
  clear: readonly ClearStretch[];
  onMark(rectangle: Omit<Defect, 'kind'>): void;
}

const sheet = { width: 328, height: 112 };
const face = { width: 326, height: 110 };

/** The board's face: a stroke of the thumb marks a rectangle on it, a tap a knot. Clear stretches are outlined. */
export function DefectDrawing({ board, clear, onMark }: Props) {
  const { width, farWidth = width, length } = board;
  const along = face.width / length;
  const across = face.height / Math.max(width, farWidth);
  const box = useRef<HTMLDivElement>(null);
  const [drawn, setDrawn] = useState<Omit<Defect, 'kind'>>();
  const mark = useRef(onMark);
  mark.current = onMark;

  useEffect(() => {
    const element = box.current;
    if (!element) return;
    let from: { x: number; y: number } | undefined;
    const at = (event: PointerEvent) => {
      const shown = (element.querySelector('svg') as SVGSVGElement).getBoundingClientRect();
      const perPixel = sheet.width / shown.width;
      return {
        x: ((event.clientX - shown.left) * perPixel - 1) / along,
        y: ((event.clientY - shown.top) * perPixel - 1) / across,
      };
    };
    const down = (event: PointerEvent) => {
      element.setPointerCapture(event.pointerId);
      from = at(event);
    };
    const move = (event: PointerEvent) => from && setDrawn(markedRectangle(board, from, at(event)));
    const up = (event: PointerEvent) => {
      if (from) mark.current(markedRectangle(board, from, at(event)));
      leave();
    };
    const leave = () => {
      from = undefined;
      setDrawn(undefined);
    };
    const listeners = { pointerdown: down, pointermove: move, pointerup: up, pointercancel: leave };
    for (const [name, listener] of Object.entries(listeners)) element.addEventListener(name, listener as EventListener);
    return () => {
      for (const [name, listener] of Object.entries(listeners))
        element.removeEventListener(name, listener as EventListener);
    };
  }, [board, along, across]);

  const say = (mm: number) => `${formatLength(mm, units.value)} ${units.value.unit}`;
  const marks = board.defects ?? [];
  const alternative = `The board’s face, ${say(length)} long. ${
    marks.map(({ kind, start, length: size }) => `${kind} from ${say(start)} to ${say(start + size)}`).join('; ') ||
    'Nothing marked'
  }. Clear: ${clear.map((one) => `${say(one.length)} by ${say(one.width)}`).join('; ') || 'nothing'}.`;
  const rectangle = ({ start, length: size, offset, width: deep }: Omit<Defect, 'kind'>) => ({
    x: start * along,
    y: offset * across,
    width: size * along,
    height: deep * across,
  });
  return (
    <figure>
      <div class="marking" ref={box}>
        <Drawing width={sheet.width} height={sheet.height} alternative={alternative}>
          {(hatch) => {
            const outline = `M0 0H${face.width}V${farWidth * across}L0 ${width * across}Z`;
            return (
              <g transform="translate(1 1)">
                <path d={outline} class="wood" />
                <path d={outline} fill={hatch.longGrain} />
                {clear.map((one) => (
                  <rect {...rectangle(one)} class="outline" stroke-dasharray="5 3" />
                ))}
                {marks.map((one) => (
                  <g>
                    <rect {...rectangle(one)} class="wood" />
                    <rect {...rectangle(one)} fill={hatch.waste} stroke="var(--ink)" />
                  </g>
                ))}
                {drawn && <rect {...rectangle(drawn)} class="outline signal" stroke-width="2" />}
              </g>
            );
          }}
        </Drawing>
      </div>
      <figcaption class="soft small">
        Near end at the left, left edge on top. Drawn {Math.max(1, Math.round(across / along))} times as wide as it is.
        Draw over it with the thumb; a tap marks a small one.
      </figcaption>
    </figure>
  );
}
