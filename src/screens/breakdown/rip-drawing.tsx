import type { CutOfBlank } from '../../core/breakdown/board-cuts.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { Slip, Wood } from '../../ui/drawing/wood.tsx';
import { sayLength } from '../../ui/say-length.ts';
import { units } from '../../ui/units.ts';

interface Props {
  one: CutOfBlank;
  /** Of the clear wood that it is ripped from, mm. */
  width: number;
  thickness: number;
  ripKerf: number;
  /** Width of the widest board, so that all are drawn to one scale. */
  widest: number;
}

const sheet = 328;

/** A blank's end to scale: its strips side by side with their rip widths, and what is left beside them. */
export function RipDrawing({ one, width, thickness, ripKerf, widest }: Props) {
  const scale = (sheet - 4) / widest;
  const height = Math.max(22, thickness * scale);
  const rips = one.strips.map(({ strip }) => sayLength(strip.width));
  let x = 2;
  return (
    <Drawing
      width={sheet}
      height={height + 4}
      alternative={`End of blank ${one.letter}, ripped into ${rips.join(', ')}.`}
    >
      {(hatch) => (
        <>
          <Wood x={2} y={2} width={width * scale} height={height} hatch={hatch.waste} />
          {one.strips.map(({ strip }) => {
            const at = x;
            const wide = strip.width * scale;
            x += (strip.width + ripKerf) * scale;
            const text = formatLength(strip.width, units.value);
            return (
              <>
                <Wood x={at} y={2} width={wide} height={height} hatch={strip.spoilt ? hatch.waste : hatch.endGrain} />
                {wide > text.length * 7 + 8 && <Slip x={at + wide / 2} y={height / 2 + 2} text={text} />}
              </>
            );
          })}
        </>
      )}
    </Drawing>
  );
}
