import type { Joint, Part } from '../../store/records/piece.ts';
import { jointKind } from './joint-kinds.ts';

/** Which parts meet, and in which kind of joint. */
export function JointTitle({ joint, parts }: { joint: Joint; parts: readonly Part[] }) {
  const names = joint.parts.map((id) => parts.find((part) => part.id === id)?.name ?? 'a deleted part');
  return (
    <>
      {names.join(' to ')}{' '}
      <span class="soft small">
        {jointKind(joint.kind)?.name ?? joint.kind} {joint.note}
      </span>
    </>
  );
}
