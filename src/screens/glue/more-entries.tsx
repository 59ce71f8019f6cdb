import { type GlueTool, glueLoss } from '../../core/gluing/glue-amount.ts';
import { Choice, Pick } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import type { FormProps } from './setup-form.tsx';

const tools: Readonly<Record<GlueTool, string>> = {
  bottle: 'Bottle',
  brush: 'Brush',
  roller: 'Roller',
  spreader: 'Spreader',
};

/** What the clamps and the time rest on besides the seams. */
export function MoreEntries({ form, change, trouble, first }: FormProps & { first: readonly string[] }) {
  return (
    <>
      <SpeciesPick label="Wood" value={form.species} first={first} onInput={(species) => change({ species })} />
      {form.meets === 'edge' && (
        <div class="fields">
          <LengthField
            label="Width across"
            value={form.across}
            problem={trouble('across')}
            onInput={(across) => change({ across })}
          />
          <LengthField
            label="Outer board"
            value={form.outerBoard}
            problem={trouble('outerBoard')}
            onInput={(outerBoard) => change({ outerBoard })}
          />
          <LengthField label="Caul" value={form.caul} problem={trouble('caul')} onInput={(caul) => change({ caul })} />
        </div>
      )}
      <div class="fields">
        <Pick
          label="Spread with"
          value={form.tool}
          options={(Object.keys(glueLoss) as GlueTool[]).map((value) => ({ value, label: tools[value] }))}
          onInput={(tool) => change({ tool })}
        />
        <Choice
          label="At work"
          value={form.hands}
          options={[
            { value: '1', label: 'Alone' },
            { value: '2', label: 'Two' },
          ]}
          onInput={(hands) => change({ hands })}
        />
      </div>
    </>
  );
}
