import { useId, useState } from 'preact/hooks';
import { type Outcome, type Problem, problem } from '../core/answer/problem.ts';
import { species as table } from '../tables/species.ts';
import { ownWoods } from './own-woods.ts';
import { speciesName } from './species-name.ts';
import { Trouble } from './trouble.tsx';

interface Props {
  label: string;
  /** Id of the species; empty when none is chosen yet. */
  value: string;
  /** Ids to list on top: what is in the rack or in this piece already. */
  first: readonly string[];
  onInput(id: string): void;
  problem?: Problem | undefined;
}

/** Chosen to add a wood; no wood's id. */
const another = '+';

/** All woods of the table. Their names are plain English: the language's own rules of order would only cost time. */
const byName = table.map(({ id }) => id).sort((a, b) => (speciesName(a) < speciesName(b) ? -1 : 1));

/** The wood that was chosen, if one was. */
export const chosenWood = (id: string): Outcome<string> => id || problem('species', 'Choose the wood.');

/** The wood, out of the species table or the maker's own. */
export function SpeciesPick({ label, value, first, onInput, problem }: Props) {
  const id = useId();
  const [adding, setAdding] = useState(false);
  // A piece from another phone may be of a wood that this one doesn't know.
  const top = [...new Set(value === '' ? first : [...first, value])];
  const own = ownWoods.value.map(({ name }) => name).filter((name) => !top.includes(name));
  const rest = byName.filter((one) => !top.includes(one));
  const option = (one: string) => (
    <option value={one} selected={!adding && one === value}>
      {speciesName(one)}
    </option>
  );
  return (
    <div class={problem ? 'field bad' : 'field'}>
      <label for={id}>{label}</label>
      <select
        id={id}
        value={adding ? another : value}
        aria-invalid={problem !== undefined}
        aria-describedby={`${id}-trouble`}
        onChange={(event) => {
          const chosen = event.currentTarget.value;
          setAdding(chosen === another);
          if (chosen !== another) onInput(chosen);
        }}
      >
        {value === '' && (
          <option value="" selected>
            Choose
          </option>
        )}
        {top.length > 0 && <optgroup label="In use">{top.map(option)}</optgroup>}
        {own.length > 0 && <optgroup label="Yours">{own.map(option)}</optgroup>}
        <optgroup label="All">{rest.map(option)}</optgroup>
        <option value={another} selected={adding}>
          Another wood
        </option>
      </select>
      {adding && (
        <a class="button" href="#/wood">
          Add it with its figures
        </a>
      )}
      <Trouble of={problem} id={`${id}-trouble`} />
    </div>
  );
}
