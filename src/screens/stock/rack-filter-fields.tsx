import { optionsOf, Pick, TextField } from '../../ui/fields.tsx';
import { Fold } from '../../ui/fold.tsx';
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

const sorts: Readonly<Record<SortBy, string>> = {
  newest: 'Newest first',
  mark: 'By chalk mark',
  widest: 'Widest first',
  longest: 'Longest first',
  thickest: 'Thickest first',
  driest: 'Driest first',
};

const places = { have: 'In the rack or set aside', ...stateNames, all: 'All' };

/** What the list shows, and in what order. */
export function RackFilterFields({ filter, woods, onChange }: Props) {
  const set = (part: Partial<RackFilter>) => onChange({ ...filter, ...part });
  const size = (field: 'width' | 'length' | 'thickness') => ({
    value: filter[field],
    limits: { least: 0, most: 20_000 },
    onAccept: (value: number | undefined) => set({ [field]: value }),
  });
  return (
    <section class="card" aria-label="Find boards">
      <TextField label="Find" hint="mark, wood or note" value={filter.search} onInput={(search) => set({ search })} />
      <Fold label="Filter and sort">
        <div class="fields">
          <Pick
            label="Of the wood"
            value={filter.species}
            options={[{ value: '', label: 'Any' }, ...woods.map((id) => ({ value: id, label: speciesName(id) }))]}
            onInput={(species) => set({ species })}
          />
          <Pick label="Where" value={filter.state} options={optionsOf(places)} onInput={(state) => set({ state })} />
          <OptionalLength label="At least wide" {...size('width')} />
          <OptionalLength label="At least long" {...size('length')} />
          <OptionalLength label="At least thick" {...size('thickness')} />
          <OptionalNumber
            label="At most moist"
            hint="%"
            value={filter.driestAt}
            unit="percent"
            limits={{ least: 0, most: 100 }}
            onAccept={(driestAt) => set({ driestAt })}
          />
          <Pick label="Sorted" value={filter.sort} options={optionsOf(sorts)} onInput={(sort) => set({ sort })} />
        </div>
      </Fold>
    </section>
  );
}
