import type { PanelLayout } from '../../core/breakdown/panel-layout.ts';
import type { Part } from '../../core/breakdown/problem-types.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { Slip, Wood } from '../../ui/drawing/wood.tsx';

interface Props {
  layout: PanelLayout;
  part: Part;
  name: string;
  /** Where a strip comes from, short: `C3 A`. */
  from(at: number): string;
}

const sheet = 328;
const gutter = 26;

/** The looped mark on a face, 24 by 24. */
const facePath = 'M16 3c-5 2-9 7-9 12 0 3 2 5 4 5s4-2 4-5-3-5-7-4';

/** A panel's face to scale: strips in order with their marks, the triangle across them, and which are glued up together first. */
export function PanelDrawing({ layout, part, name, from }: Props) {
  const scale = Math.min((sheet - gutter - 6) / part.length, 300 / layout.width);
  const long = part.length * scale;
  const wide = layout.width * scale;
  const half = Math.min(long * 0.3, wide * 0.45);
  const middle = long * 0.6;
  return (
    <Drawing
      name={name}
      width={sheet}
      height={wide + 6}
      alternative={`${name}, face up: ${layout.strips.map((_, at) => `strip ${at + 1} from ${from(at)}`).join(', ')}. A triangle is struck across.`}
    >
      {(hatch) => (
        <g transform="translate(2 3)">
          {layout.strips.map(({ offset, jointed }, at) => {
            const y = offset * scale;
            const height = jointed * scale;
            const size = Math.min(16, height * 0.7);
            return (
              <>
                <Wood y={y} width={long} height={height} hatch={hatch.longGrain} />
                <Slip x={6} y={y + height / 2} from="start" text={`${at + 1}  ${from(at)}`} />
                <path
                  transform={`translate(${long - 14 - size / 2} ${y + (height - size) / 2}) scale(${size / 24})`}
                  d={facePath}
                  class="outline"
                  stroke-width={48 / size}
                />
              </>
            );
          })}
          <path
            d={`M${middle} 2L${middle + half} ${wide - 2}H${middle - half}z`}
            class="outline"
            stroke-width="2.5"
            stroke-linejoin="round"
          />
          {layout.groups.length > 1 &&
            layout.groups.map((group, n) => {
              const [first, last] = [layout.strips[group[0] ?? 0], layout.strips[group.at(-1) ?? 0]];
              if (!first || !last) return null;
              const y = first.offset * scale + 2;
              const height = (last.offset + last.jointed) * scale - 2 - y;
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
