import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { breadboardEdges } from '../../core/movement/breadboard-edges.ts';
import type { Seasons } from '../../core/movement/seasons.ts';
import type { Attached } from '../../store/records/piece.ts';
import { Answer } from '../../ui/answer.tsx';
import { Facts } from '../../ui/facts.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { attachTop } from './attach-top.ts';
import { fixingOf, movingPart, needsSlots, screwPositions } from './joint-slots.ts';
import type { Judged } from './read-joint.ts';
import { SlotsFound } from './slots-found.tsx';
import { woodOfPart } from './wood-of-part.ts';

interface Props {
  joint: Judged;
  seasons: Seasons;
}

/** How to set what holds a joint that must move: its slots, or its buttons or brackets. */
export function FloatingFound({ joint, seasons }: Props) {
  if (!needsSlots(joint)) return null;
  const { attached, kind } = joint.joint;
  if (attached) return <AttachmentFound joint={joint} attached={attached} seasons={seasons} />;
  return (
    <>
      <SlotsFound joint={joint} seasons={seasons} />
      {kind === 'breadboard' && <PanelEdges joint={joint} seasons={seasons} />}
    </>
  );
}

function AttachmentFound({ joint, attached, seasons }: Props & { attached: Attached }) {
  const set = attachTop(joint, seasons, attached);
  if (isProblem(set)) return <Trouble of={set} />;
  return (
    <Answer
      label={attached.kind === 'button' ? 'Gap in the groove today' : 'Screw from its stop today'}
      of={mm(set.value.setting)}
      working={set.working}
    >
      <p>
        <Say phrase={set.value.instruction} />
      </p>
    </Answer>
  );
}

/** How far the panel stands out beyond its end piece, or falls short of it. */
function PanelEdges({ joint, seasons }: Props) {
  const { length } = joint.contact;
  const fixing = fixingOf(joint);
  const end = breadboardEdges({
    wood: woodOfPart(joint.parts[movingPart(joint) ?? 0]),
    width: length,
    seasons,
    fixedAt: screwPositions(fixing, length)[fixing.fixed] ?? Number.NaN,
  });
  // What is wrong with the pegs is said at their slots.
  if (isProblem(end)) return null;
  const { dry, wet } = end.value;
  return (
    <div class="answer">
      <Facts
        rows={[
          ['Panel stands out when damp', mm(Math.max(0, wet.near, wet.far))],
          ['Panel falls short when dry', mm(Math.max(0, -dry.near, -dry.far))],
        ]}
      />
      <ShowWorking of={end.working} />
    </div>
  );
}
