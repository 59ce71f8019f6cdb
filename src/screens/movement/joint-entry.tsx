import { useDraft } from '../../app/draft.ts';
import { isProblem, type Problem, problem } from '../../core/answer/problem.ts';
import { pieces } from '../../store/pieces.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Button } from '../../ui/button.tsx';
import { Pick } from '../../ui/fields.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { caseCorners } from './case-corners.ts';
import { jointKind, jointKinds } from './joint-kinds.ts';

/** The parts in order around the joint: two, or the four sides of a case. */
interface Form {
  readonly kind: string;
  readonly parts: readonly string[];
  readonly tried: boolean;
}

const empty: Form = { kind: jointKinds[0].id, parts: ['', '', '', ''], tried: false };
const kinds = jointKinds.map(({ id, name }) => ({ value: id, label: name }));

/** Which two parts meet next, and how. */
export function JointEntry({ piece, onAdd }: { piece: Piece; onAdd(jointId: string | undefined): void }) {
  const draft = useDraft<Form>(`joint-form-3-${piece.id}`, empty);
  const form = draft.value;
  if (!form) return null;
  const kind = jointKind(form.kind) ?? jointKinds[0];
  const parts = form.parts.slice(0, kind.parts.length);
  const bad = parts.map((_, at) => badPart(piece, parts.slice(0, at + 1)));
  const isCase = parts.length > 2;
  const joints =
    bad.find((one) => one) ??
    (isCase ? caseCorners(piece.parts, parts) : [{ kind: kind.id, parts, meets: kind.meets }]);
  const options = [{ value: '', label: 'Choose' }, ...piece.parts.map(({ id, name }) => ({ value: id, label: name }))];
  const add = async () => {
    if (isProblem(joints)) return draft.set({ ...form, tried: true });
    const added = joints.map((joint) => ({ ...joint, id: crypto.randomUUID() }));
    try {
      await pieces.change(piece.id, (now) => ({ ...now, joints: [...now.joints, ...added] }));
      draft.clear({ ...empty, kind: form.kind });
      // Four corners are told apart by their verdicts, which stand in the list.
      onAdd(isCase ? undefined : added[0]?.id);
    } catch {
      // Not stored: the shell keeps the change and shows it, and the form stays as it was.
    }
  };
  return (
    <section class="task" aria-label="Add a joint">
      <h2>Add a joint</h2>
      <Pick label="Kind" value={form.kind} options={kinds} onInput={(next) => draft.set({ ...form, kind: next })} />
      <div class="fields">
        {kind.parts.map((label, at) => (
          <Pick
            label={label}
            value={parts[at] ?? ''}
            options={options}
            problem={form.tried ? bad[at] : undefined}
            onInput={(id) => draft.set({ ...form, parts: form.parts.with(at, id) })}
          />
        ))}
      </div>
      <Trouble of={isProblem(joints) && joints.field === 'sides' ? joints : undefined} />
      <Button look="big" onClick={add}>
        {isCase ? 'Add four joints' : 'Add joint'}
      </Button>
    </section>
  );
}

/** What is wrong with the last of these parts. */
function badPart({ parts }: Piece, chosen: readonly string[]): Problem | undefined {
  const part = parts.find(({ id }) => id === chosen.at(-1));
  if (!part) return problem('', 'Choose the part.');
  // A panel may meet itself: its boards, or the sides of a case that it folds into.
  if (!part.panel && chosen.filter((id) => id === part.id).length > part.quantity)
    return problem('', 'Chosen more often than there are.');
  return undefined;
}
