import type { GlueTool } from '../../core/gluing/glue-amount.ts';
import { Choice, optionsOf, Pick } from '../../ui/fields.tsx';
import { LengthField } from '../../ui/pad/length-field.tsx';
import { SpeciesPick } from '../../ui/species-pick.tsx';
import type { FormProps } from './setup-form.tsx';

const tools = optionsOf<GlueTool>({ bottle: 'Bottle', brush: 'Brush', roller: 'Roller', spreader: 'Spreader' });
const hands = optionsOf({ 1: 'Alone', 2: 'Two' });

/** What the clamps and the time rest on besides the seams. */
export function MoreEntries({ form, change, entry, piece }: FormProps) {
  return (
    <>
      <SpeciesPick
        label="Wood"
        value={form.species}
        first={piece?.parts.map(({ species }) => species) ?? []}
        onInput={(species) => change({ species })}
      />
      {form.meets === 'edge' && (
        <div class="fields">
          <LengthField label="Width across" {...entry('across')} />
          <LengthField label="Outer board" {...entry('outerBoard')} />
          <LengthField label="Caul" {...entry('caul')} />
        </div>
      )}
      <div class="fields">
        <Pick label="Spread with" value={form.tool} options={tools} onInput={(tool) => change({ tool })} />
        <Choice label="At work" value={form.hands} options={hands} onInput={(value) => change({ hands: value })} />
      </div>
    </>
  );
}
