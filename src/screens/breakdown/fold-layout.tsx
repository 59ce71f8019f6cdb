import type { FoldedPanel } from '../../core/breakdown/folded-panel.ts';
import { Drawing } from '../../ui/drawing/drawing.tsx';
import { Slip, Wood } from '../../ui/drawing/wood.tsx';
import { Say } from '../../ui/say.tsx';
import { sayLength } from '../../ui/say-length.ts';
import { ShowWorking } from '../../ui/show-working.tsx';

const sheet = 300;

/** A folded panel laid out along the grain, outside up: its sections, and every cut from one end. */
export function FoldLayout({ width, of: { length, layout, cuts } }: { width: number; of: FoldedPanel }) {
  const scale = (sheet - 4) / length;
  const height = Math.min(120, width * scale);
  const words = layout.map(({ name, from, to }) => `${name} from ${sayLength(from)} to ${sayLength(to)}`);
  return (
    <>
      <Drawing
        name={layout.map(({ name }) => name).join(', ')}
        width={sheet}
        height={height + 4}
        alternative={`Outside up: ${words.join(', ')}.`}
      >
        {(hatch) => (
          <g transform="translate(2 2)">
            <Wood width={length * scale} height={height} hatch={hatch.longGrain} />
            {cuts.map(({ at, takes }) => (
              <rect x={at * scale} width={Math.max(2, takes.value * scale)} height={height} class="cut" />
            ))}
            {layout.map(({ from, to }, n) => (
              <Slip x={((from + to) / 2) * scale} y={height / 2} text={`${n + 1}`} />
            ))}
          </g>
        )}
      </Drawing>
      <p class="soft small">
        Glue up one panel, number the parts on the outer face, then cut in order, all from one end. A tilted blade traps
        the piece between fence and blade: keep the offcut side free, and follow the saw’s manual.
      </p>
      <ol class="cuts" aria-label="Cuts of the folded panel">
        {cuts.map(({ say: cut, takes }) => (
          <li>
            <Say phrase={cut} />
            <ShowWorking of={takes.working} />
          </li>
        ))}
      </ol>
    </>
  );
}
