import type { Slot } from '../../core/movement/elongated-slots.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';

const size = { width: 320, height: 56, margin: 6 };
/** Slots are a few hundredths of the seam: drawn to its scale they could not be told apart. */
const enlarged = 3;

interface Props {
  name: string;
  slots: readonly Slot[];
  shank: number;
  /** Of the seam. */
  length: number;
}

/** Screws along the seam, to scale in their places, the slots enlarged. */
export function SlotsDrawing({ name, slots, shank, length }: Props) {
  const scale = (size.width - 2 * size.margin) / length;
  const middle = 22;
  return (
    <>
      <Drawing
        name={name}
        width={size.width}
        height={size.height}
        alternative={`${slots.length} along the joint; the slots grow away from the fixed one.`}
      >
        {() => [
          <rect class="wood" x={size.margin} y={middle - 16} width={length * scale} height={32} />,
          ...slots.map((slot, at) => {
            const x = size.margin + slot.position * scale;
            const from = x - (slot.position - slot.from) * scale * enlarged;
            const width = slot.length * scale * enlarged;
            const height = shank * scale * enlarged;
            return (
              <g>
                <rect class="outline" x={from} y={middle - height / 2} width={width} height={height} rx={height / 2} />
                <circle cx={x} cy={middle} r={slot.fixed ? height / 2 : 1.5} fill="currentColor" />
                <text x={x} y={size.height - 4} font-size="12" text-anchor="middle">
                  {at + 1}
                </text>
              </g>
            );
          }),
        ]}
      </Drawing>
      <p class="soft small">Slots drawn {enlarged} times as large.</p>
    </>
  );
}
