import { useRef, useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { formatLength } from '../../core/length/format-length.ts';
import { pieces } from '../../store/pieces.ts';
import type { Part, Piece } from '../../store/records/piece.ts';
import { Button } from '../../ui/button.tsx';
import { NumberField, TextField } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import { units } from '../../ui/units.ts';
import { CutChoice, KindChoice } from './part-choices.tsx';
import { PartDoubts } from './part-doubts.tsx';
import { nextForm, type PartField, type PartForm, readPartForm } from './part-form.ts';
import { withPart } from './piece-edits.ts';

const formAfter = (last: Part | undefined, common: readonly string[]) =>
  nextForm(last, common[0] ?? '', last && formatLength(last.thickness, units.value));

/** The next part: what stays the same from one to the next is carried over, what is half-typed survives a killed tab. */
export function PartEntry({ piece, common }: { piece: Piece; common: readonly string[] }) {
  const draft = useDraft<PartForm>(`part-form-1-${piece.id}`, formAfter(piece.parts.at(-1), common));
  const [added, setAdded] = useState('');
  const adding = useRef(false);
  const entries = useRef<HTMLDivElement>(null);
  const form = draft.value;
  if (!form) return null;

  const { part, problems } = readPartForm(form, units.value.unit);
  const field = (name: PartField) => ({
    value: form[name],
    problem: form.tried ? problems.get(name) : undefined,
    onInput: (text: string) => draft.set({ ...form, [name]: text }),
  });
  const focusFirst = (selector: string) =>
    requestAnimationFrame(() => entries.current?.querySelector<HTMLElement>(selector)?.focus());

  const add = async () => {
    if (adding.current) return;
    if (!part) {
      draft.set({ ...form, tried: true });
      focusFirst('[aria-invalid="true"]');
      return;
    }
    const stored = { ...part, id: crypto.randomUUID() };
    adding.current = true;
    try {
      await pieces.change(piece.id, (now) => withPart(now, stored));
      draft.clear(formAfter(stored, common));
      setAdded(`${stored.name} is on the list.`);
      focusFirst('input:not([type=radio])');
    } catch {
      // Not stored: the shell keeps the change and shows it, and the form stays as it was typed.
    } finally {
      adding.current = false;
    }
  };

  return (
    <section class="card" aria-label="Next part" ref={entries}>
      <h2>{piece.parts.length === 0 ? 'First part' : 'Next part'}</h2>
      <KindChoice value={form.kind} onInput={(kind) => draft.set({ ...form, kind })} />
      <SpeciesPick label="Wood" first={common} {...field('species')} />
      <CutChoice value={form.cut} onInput={(cut) => draft.set({ ...form, cut })} />
      <div class="fields">
        <TextField label="Name" {...field('name')} />
        <NumberField label="How many" {...field('quantity')} />
        <LengthField label="Length, along the grain" {...field('length')} />
        <LengthField label="Width" {...field('width')} />
        <LengthField label="Thickness" {...field('thickness')} done={{ label: 'Add part', run: () => void add() }} />
      </div>
      <PartDoubts part={part} />
      <Button look={piece.parts.length === 0 ? 'big now' : 'big'} onClick={add}>
        Add part
      </Button>
      <p role="status" class="soft small">
        {added}
      </p>
    </section>
  );
}
