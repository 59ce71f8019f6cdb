import type { PanelLayout } from '../../core/breakdown/panel-layout.ts';
import type { Part } from '../../core/breakdown/problem-types.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';

interface Props {
  layout: PanelLayout;
  part: Part;
  name: string;
  /** Where a strip comes from, short: `C3 A`. */
  from(at: number): string;
}

const sheet = 328;
const gutter = 26;

/** A panel's face to scale: strips in order with their marks, the triangle across them, and which are glued up together first. */
export function PanelDrawing({ layout, part, name, from }: Props) {
  const scale = Math.min((sheet - gutter - 6) / part.length, 300 / layout.width);
  const long = part.length * scale;
  const wide = layout.width * scale;
  const half = Math.min(long * 0.3, wide * 0.45);
  const middle = long * 0.6;
  const strips = layout.strips.map((strip, at) => ({
    ...strip,
    at,
    y: strip.offset * scale,
    height: strip.jointed * scale,
  }));
  return (
    <Drawing
      name={name}
      width={sheet}
      height={wide + 6}
      alternative={`${name}, face up: ${strips.map(({ at }) => `strip ${at + 1} from ${from(at)}`).join(', ')}. A triangle is struck across.`}
    >
      {(hatch) => (
        <g transform="translate(2 3)">
          {strips.map(({ at, y, height }) => (
            <g>
              <rect y={y} width={long} height={height} class="wood" />
              <rect y={y} width={long} height={height} fill={hatch.longGrain} />
              <Label x={4} y={y + height / 2} text={`${at + 1}  ${from(at)}`} />
              <FaceMarkAt x={long - 14} y={y + height / 2} size={Math.min(16, height * 0.7)} />
            </g>
          ))}
          <path
            d={`M${middle} 2L${middle + half} ${wide - 2}H${middle - half}z`}
            class="outline"
            stroke-width="2.5"
            stroke-linejoin="round"
          />
          {layout.groups.length > 1 &&
            layout.groups.map((group, n) => {
              const first = strips[group[0] ?? 0];
              const last = strips[group.at(-1) ?? 0];
              if (!first || !last) return null;
              const y = first.y + 2;
              const height = last.y + last.height - 2 - y;
              return (
                <g transform={`translate(${long + 4} ${y})`}>
                  <path d={`M0 0h5v${height}h-5`} class="outline" stroke-width="2" />
                  <text x="9" y={height / 2 + 5} font-size="14">
                    {n + 1}
                  </text>
                </g>
              );
            })}
        </g>
      )}
    </Drawing>
  );
}

function Label({ x, y, text }: { x: number; y: number; text: string }) {
  return (
    <>
      <rect x={x - 2} y={y - 8} width={text.length * 6.8 + 6} height="16" class="paper" />
      <text x={x + 1} y={y + 5} font-size="12">
        {text}
      </text>
    </>
  );
}

/** The looped mark on a face. */
function FaceMarkAt({ x, y, size }: { x: number; y: number; size: number }) {
  const scale = size / 24;
  return (
    <path
      transform={`translate(${x - size / 2} ${y - size / 2}) scale(${scale})`}
      d="M16 3c-5 2-9 7-9 12 0 3 2 5 4 5s4-2 4-5-3-5-7-4"
      class="outline"
      stroke-width={2 / scale}
    />
  );
}
