import { useDraft } from '../../app/draft.ts';
import { isProblem, type Problem, problem } from '../../core/answer/problem.ts';
import { pieces } from '../../store/pieces.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Button } from '../../ui/button.tsx';
import { Pick } from '../../ui/fields.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { caseCorners } from './case-corners.ts';
import { type JointKind, jointKind, jointKinds } from './joint-kinds.ts';

const places = ['first', 'second', 'third', 'fourth'] as const;
type Place = (typeof places)[number];

/** The parts in order around the joint: two, or the four sides of a case. */
interface Form extends Readonly<Record<Place, string>> {
  readonly kind: string;
  readonly tried: boolean;
}

const cleat = jointKinds[0] as JointKind;
/** Not one joint but four. */
const foldedCase = 'case';

const empty: Form = { kind: 'cleat', first: '', second: '', third: '', fourth: '', tried: false };

/** Which two parts meet next, and how. */
export function JointEntry({ piece, onAdd }: { piece: Piece; onAdd(jointId: string | undefined): void }) {
  const draft = useDraft<Form>(`joint-form-2-${piece.id}`, empty);
  const form = draft.value;
  if (!form) return null;
  const kind = jointKind(form.kind) ?? cleat;
  const wanted = form.kind === foldedCase ? places : places.slice(0, 2);
  const labels = form.kind === foldedCase ? ['One side', 'Next', 'Opposite', 'Last'] : [kind.first, kind.second];
  const bad = wanted.map((_, at) => badPart(piece, form, wanted, at));
  const corners = form.kind === foldedCase && !bad.some((one) => one) ? caseCorners(piece.parts, form) : undefined;
  const trouble = isProblem(corners) ? corners : bad.find((one) => one);
  const options = [{ value: '', label: 'Choose' }, ...piece.parts.map(({ id, name }) => ({ value: id, label: name }))];
  const add = async () => {
    if (trouble || isProblem(corners)) return draft.set({ ...form, tried: true });
    const joints = corners ?? [{ kind: form.kind, parts: [form.first, form.second], meets: kind.meets }];
    const added = joints.map((joint) => ({ ...joint, id: crypto.randomUUID() }));
    try {
      await pieces.change(piece.id, (now) => ({ ...now, joints: [...now.joints, ...added] }));
      draft.clear({ ...empty, kind: form.kind });
      // Four corners are told apart by their verdicts, which stand in the list.
      onAdd(corners ? undefined : added[0]?.id);
    } catch {
      // Not stored: the shell keeps the change and shows it, and the form stays as it was.
    }
  };
  return (
    <section class="task" aria-label="Add a joint">
      <h2>Add a joint</h2>
      <Pick
        label="Kind"
        value={form.kind}
        options={[
          ...jointKinds.map(({ id, name }) => ({ value: id, label: name })),
          { value: foldedCase, label: 'Mitred case, four corners' },
        ]}
        onInput={(next) => draft.set({ ...form, kind: next })}
      />
      <div class="fields">
        {wanted.map((place, at) => (
          <Pick
            label={labels[at] ?? ''}
            value={form[place]}
            options={options}
            problem={form.tried ? bad[at] : undefined}
            onInput={(id) => draft.set({ ...form, [place]: id })}
          />
        ))}
      </div>
      {isProblem(corners) && <Trouble of={corners} />}
      <Button look="big" onClick={add}>
        {form.kind === foldedCase ? 'Add four joints' : 'Add joint'}
      </Button>
    </section>
  );
}

function badPart({ parts }: Piece, form: Form, places: readonly Place[], at: number): Problem | undefined {
  const chosen = places.slice(0, at + 1).map((place) => form[place]);
  const part = parts.find(({ id }) => id === chosen[at]);
  if (!part) return problem('', 'Choose the part.');
  // A panel may meet itself: its boards, or the sides of a case that it folds into.
  if (!part.panel && chosen.filter((id) => id === part.id).length > part.quantity)
    return problem('', 'Chosen more often than there are.');
  return undefined;
}
