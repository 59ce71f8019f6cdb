import type { Meeting } from '../../store/records/piece.ts';
import { Drawing, type Hatch } from '../../ui/drawing/drawing.tsx';
import type { Judged } from './read-joint.ts';

const size = { width: 320, height: 150, margin: 8 };

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Two parts where they meet, to scale, the seam running across the drawing; the hatch runs with the grain. */
export function JointDrawing({ joint }: { joint: Judged }) {
  const { parts, meets, contact } = joint;
  const lies = contact.breadth !== undefined;
  const both = <T,>(of: (at: 0 | 1) => T): readonly [T, T] => [of(0), of(1)];
  const along = both((at) => (meets[at].grain === 'along' ? parts[at].length : parts[at].width));
  // A long rail is cut short beyond its joint: only where the parts meet matters here.
  const most = lies ? Number.POSITIVE_INFINITY : Math.max(...along);
  const across = both((at) => Math.min(most, depthOf(parts[at], meets[at], lies)));
  const tall = lies ? Math.max(...across) : across[0] + across[1];
  const scale = Math.min((size.width - 2 * size.margin) / Math.max(...along), (size.height - 2 * size.margin) / tall);
  const middle = size.height / 2;
  const seam = lies ? middle : middle + ((across[0] - across[1]) * scale) / 2;
  const box = (at: 0 | 1): Box => {
    const width = along[at] * scale;
    const height = Math.max(3, across[at] * scale);
    const y = lies ? middle - height / 2 : at === 0 ? seam - height : seam;
    return { x: (size.width - width) / 2, y, width, height };
  };
  const said = parts.map((part, at) => `${part.name}, grain ${meets[at]?.grain} the joint`);
  return (
    <Drawing
      name={parts.map((part) => part.name).join(' to ')}
      width={size.width}
      height={size.height}
      alternative={said.join(', meets ')}
    >
      {(hatch) => [
        <Grained box={box(0)} grain={meets[0].grain} hatch={hatch} />,
        <Grained box={box(1)} grain={meets[1].grain} hatch={hatch} />,
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

function depthOf({ length, width, thickness }: Judged['parts'][number], meeting: Meeting, lies: boolean): number {
  if (meeting.grain === 'across') return length;
  return meeting.surface === 'edge' && lies ? thickness : width;
}

function Grained({ box, grain, hatch }: { box: Box; grain: Meeting['grain']; hatch: Hatch }) {
  const { x, y, width, height } = box;
  // The hatch runs from left to right: turned by a quarter it runs with grain that crosses the joint.
  const turned = { x: y, y: -x - width, width: height, height: width, transform: 'rotate(90)' };
  return (
    <g>
      <rect class="wood" {...box} />
      <rect fill={hatch.longGrain} {...(grain === 'along' ? box : turned)} />
    </g>
  );
}
