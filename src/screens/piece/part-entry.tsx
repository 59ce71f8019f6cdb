import { useState } from 'preact/hooks';
import { useForm } from '../../app/form.ts';
import { pieces } from '../../store/pieces.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Button } from '../../ui/button.tsx';
import { NumberField, TextField } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import { CutChoice, KindChoice } from './part-choices.tsx';
import { PartDoubts } from './part-doubts.tsx';
import { nextForm, readPartForm } from './part-form.ts';
import { withPart } from './piece-edits.ts';

/** The next part: what stays the same from one to the next is carried over, what is half-typed survives a killed tab. */
export function PartEntry({ piece, common }: { piece: Piece; common: readonly string[] }) {
  const [added, setAdded] = useState('');
  const last = piece.parts.at(-1);
  const carried = nextForm(last, common[0] ?? '');
  const typed = useForm(`part-form-2-${piece.id}`, carried, (form) => readPartForm(form, last));
  if (!typed) return null;
  const { form, field, change } = typed;
  const add = () =>
    void typed.store(async (part) => {
      const id = crypto.randomUUID();
      await pieces.change(piece.id, (now) => withPart(now, { ...part, id }));
      setAdded(`${part.name} is on the list.`);
      typed.focus('input:not([type=radio])');
    });

  return (
    <section class="card" aria-label="Next part" ref={typed.entries}>
      <h2>{piece.parts.length === 0 ? 'First part' : 'Next part'}</h2>
      <KindChoice value={form.kind} onInput={(kind) => change({ kind })} />
      <SpeciesPick label="Wood" first={common} {...field('species')} />
      <CutChoice value={form.cut} onInput={(cut) => change({ cut })} />
      <div class="fields">
        <TextField label="Name" {...field('name')} />
        <NumberField label="How many" {...field('quantity')} />
        <LengthField label="Length, along the grain" {...field('length')} />
        <LengthField label="Width" {...field('width')} />
        <LengthField label="Thickness" {...field('thickness')} done={{ label: 'Add part', run: add }} />
      </div>
      <PartDoubts part={typed.value} />
      <Button look={piece.parts.length === 0 ? 'big now' : 'big'} onClick={add}>
        Add part
      </Button>
      <p role="status" class="soft small">
        {added}
      </p>
    </section>
  );
}
