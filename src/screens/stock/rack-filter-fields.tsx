import { badNumber } from '../../core/answer/bad-number.ts';
import { Pick, TextField } from '../../ui/fields.tsx';
import { OptionalLength, OptionalNumber } from '../../ui/settled.tsx';
import { speciesName } from '../../ui/species-name.ts';
import type { RackFilter, SortBy } from './rack-filter.ts';
import { stateNames } from './state-names.ts';

interface Props {
  filter: RackFilter;
  /** Ids of the woods that are there. */
  woods: readonly string[];
  onChange(filter: RackFilter): void;
}

const sorts: readonly { readonly value: SortBy; readonly label: string }[] = [
  { value: 'newest', label: 'Newest first' },
  { value: 'mark', label: 'By chalk mark' },
  { value: 'widest', label: 'Widest first' },
  { value: 'longest', label: 'Longest first' },
  { value: 'thickest', label: 'Thickest first' },
  { value: 'driest', label: 'Driest first' },
];

/** What the list shows, and in what order. */
export function RackFilterFields({ filter, woods, onChange }: Props) {
  const size = (field: 'width' | 'length' | 'thickness') => ({
    value: filter[field],
    check: (value: number) => badNumber('', 'This size', value, 'mm', { least: 0, most: 20_000 }),
    onAccept: (value: number | undefined) => onChange({ ...filter, [field]: value }),
  });
  return (
    <section class="no-print card" aria-label="Find boards">
      <TextField
        label="Find"
        hint="mark, wood or note"
        value={filter.search}
        onInput={(search) => onChange({ ...filter, search })}
      />
      <details class="working">
        <summary>Filter and sort</summary>
        <div class="fields">
          <Pick
            label="Of the wood"
            value={filter.species}
            options={[{ value: '', label: 'Any' }, ...woods.map((id) => ({ value: id, label: speciesName(id) }))]}
            onInput={(species) => onChange({ ...filter, species })}
          />
          <Pick
            label="Where"
            value={filter.state}
            options={[
              { value: 'have', label: 'In the rack or set aside' },
              ...(Object.keys(stateNames) as (keyof typeof stateNames)[]).map((value) => ({
                value,
                label: stateNames[value],
              })),
              { value: 'all', label: 'All, also used up' },
            ]}
            onInput={(state) => onChange({ ...filter, state })}
          />
          <OptionalLength label="At least wide" {...size('width')} />
          <OptionalLength label="At least long" {...size('length')} />
          <OptionalLength label="At least thick" {...size('thickness')} />
          <OptionalNumber
            label="At most moist"
            hint="%"
            value={filter.driestAt}
            check={(value) => badNumber('', 'The moisture', value, 'percent', { least: 0, most: 100 })}
            onAccept={(driestAt) => onChange({ ...filter, driestAt })}
          />
          <Pick label="Sorted" value={filter.sort} options={sorts} onInput={(sort) => onChange({ ...filter, sort })} />
        </div>
      </details>
    </section>
  );
}
