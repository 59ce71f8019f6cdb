import type { Meeting, Part } from '../../store/records/piece.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { Wood } from '../../ui/drawing/wood.tsx';
import type { Judged } from './read-joint.ts';

const size = { width: 320, height: 150, margin: 8 };

/** Two parts where they meet, to scale, the seam running across the drawing; the hatch runs with the grain. */
export function JointDrawing({ joint: { parts, meets, contact } }: { joint: Judged }) {
  const lies = contact.breadth !== undefined;
  const widths = parts.map(({ length, width }, at) => (meets[at]?.grain === 'along' ? length : width));
  const widest = Math.max(...widths);
  const [above = 0, below = 0] = parts.map((part, at) => {
    const deep = depthOf(part, meets[at], lies);
    // A long rail is cut short beyond its joint: only where the parts meet matters here.
    return lies ? deep : Math.min(widest, deep);
  });
  const tall = lies ? Math.max(above, below) : above + below;
  const scale = Math.min((size.width - 2 * size.margin) / widest, (size.height - 2 * size.margin) / tall);
  const seam = (size.height - tall * scale) / 2 + above * scale;
  const boxes = [above, below].map((deep, at) => {
    const width = (widths[at] ?? 0) * scale;
    const height = Math.max(3, deep * scale);
    const y = lies ? (size.height - height) / 2 : at === 0 ? seam - height : seam;
    return { x: (size.width - width) / 2, y, width, height };
  });
  const said = parts.map((part, at) => `${part.name}, grain ${meets[at]?.grain} the joint`);
  return (
    <Drawing
      name={parts.map((part) => part.name).join(' to ')}
      width={size.width}
      height={size.height}
      alternative={said.join(', meets ')}
    >
      {(hatch) => [
        ...boxes.map(({ x, y, width, height }, at) =>
          meets[at]?.grain === 'along' ? (
            <Wood {...{ x, y, width, height }} hatch={hatch.longGrain} />
          ) : (
            // The hatch runs from left to right: turned by a quarter it runs with grain that crosses the joint.
            <g transform="rotate(90)">
              <Wood x={y} y={-x - width} width={height} height={width} hatch={hatch.longGrain} />
            </g>
          ),
        ),
        !lies && (
          <path
            class="signal"
            stroke-width="3"
            d={`M${(size.width - contact.length * scale) / 2} ${seam}h${contact.length * scale}`}
          />
        ),
      ]}
    </Drawing>
  );
}

function depthOf({ length, width, thickness }: Part, meeting: Meeting | undefined, lies: boolean): number {
  if (meeting?.grain === 'across') return length;
  return meeting?.surface === 'edge' && lies ? thickness : width;
}
