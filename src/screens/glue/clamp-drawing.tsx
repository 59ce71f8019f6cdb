import { formatQuantity } from '../../core/answer/format-quantity.ts';
import { mm } from '../../core/answer/quantity.ts';
import { clampPlaces } from '../../core/gluing/clamp-count.ts';

import { Drawing } from '../../ui/drawing/drawing.tsx';
import { units } from '../../ui/units.ts';

interface Props {
  /** mm along the seams. */
  length: number;
  clamps: number;
  /** mm across the panel, where it is known. */
  across: number | undefined;
}

const width = 340;
const margin = 8;
/** Clamps over each other would be one black bar. */
const mostDrawn = 40;

/** The panel from above with its clamps to scale along it: whole lines above, dashed ones below. */
export function ClampDrawing({ length, clamps, across }: Props) {
  if (clamps > mostDrawn) return null;
  const scale = (width - 2 * margin) / length;
  const height = Math.min(150, Math.max(36, (across ?? length / 4) * scale));
  const places = clampPlaces(length, clamps);
  const say = (value: number) => formatQuantity(mm(value), units.value);
  return (
    <Drawing
      name="Clamps"
      width={width}
      height={height + 40}
      alternative={`${clamps} clamps along ${say(length)}, ${say(length / clamps)} apart and half of that from the ends, the first below, the next above and so on.`}
    >
      {(hatch) => (
        <>
          <rect class="wood" x={margin} y="12" width={width - 2 * margin} height={height} />
          <rect x={margin} y="12" width={width - 2 * margin} height={height} fill={hatch.longGrain} />
          {places.map(({ at, side }) => {
            const x = margin + at * scale;
            return (
              <path
                class="outline"
                d={`M${x} 2v${height + 20}M${x - 5} 8h10M${x - 5} ${height + 16}h10`}
                stroke-width="3"
                stroke-dasharray={side === 'below' ? '5 4' : undefined}
              />
            );
          })}
          <text x={margin} y={height + 36} font-size="12">
            Dashed: below.
          </text>
        </>
      )}
    </Drawing>
  );
}
