import { useDraft } from '../../app/draft.ts';
import { type Problem, problem } from '../../core/answer/problem.ts';
import { pieces } from '../../store/pieces.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Pick } from '../../ui/fields.tsx';
import { jointKind, jointKinds } from './joint-kinds.ts';

interface Form {
  readonly kind: string;
  readonly first: string;
  readonly second: string;
  readonly tried: boolean;
}

const empty: Form = { kind: 'cleat', first: '', second: '', tried: false };

/** Which two parts meet next, and how. */
export function JointEntry({ piece }: { piece: Piece }) {
  const draft = useDraft<Form>(`joint-form-1-${piece.id}`, empty);
  const form = draft.value;
  if (!form) return null;
  const kind = jointKind(form.kind);
  const problems = { first: badPart(piece, form, 'first'), second: badPart(piece, form, 'second') };
  const options = [{ value: '', label: 'Choose' }, ...piece.parts.map(({ id, name }) => ({ value: id, label: name }))];
  const add = async () => {
    if (problems.first || problems.second) return draft.set({ ...form, tried: true });
    const joint = { id: crypto.randomUUID(), kind: form.kind, parts: [form.first, form.second], meets: kind.meets };
    try {
      await pieces.change(piece.id, (now) => ({ ...now, joints: [...now.joints, joint] }));
      draft.clear({ ...empty, kind: form.kind });
    } catch {
      // Not stored: the shell keeps the change and shows it, and the form stays as it was.
    }
  };
  return (
    <section class="task" aria-label="Next joint">
      <h2>{piece.joints.length === 0 ? 'First joint' : 'Next joint'}</h2>
      <Pick
        label="Kind"
        value={form.kind}
        options={jointKinds.map(({ id, name }) => ({ value: id, label: name }))}
        onInput={(next) => draft.set({ ...form, kind: next })}
      />
      <div class="fields">
        {(['first', 'second'] as const).map((which) => (
          <Pick
            label={kind[which]}
            value={form[which]}
            options={options}
            problem={form.tried ? problems[which] : undefined}
            onInput={(id) => draft.set({ ...form, [which]: id })}
          />
        ))}
      </div>
      <button type="button" class="button big" onClick={() => void add()}>
        Add joint
      </button>
    </section>
  );
}

function badPart({ parts }: Piece, form: Form, which: 'first' | 'second'): Problem | undefined {
  const part = parts.find(({ id }) => id === form[which]);
  if (!part) return problem(which, 'Choose the part.');
  if (which === 'second' && form.first === form.second && part.quantity === 1 && !part.panel)
    return problem(which, 'There is only one of it: it can’t meet itself.');
  return undefined;
}
