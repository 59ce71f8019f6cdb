import { useId } from 'preact/hooks';
import type { Problem } from '../core/answer/problem.ts';
import { species as table } from '../tables/species.ts';
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

/** The wood, out of the species table. */
export function SpeciesPick({ label, value, first, onInput, problem }: Props) {
  const id = useId();
  const top = [...new Set(first)];
  const rest = table
    .filter((one) => !top.includes(one.id))
    .map((one) => one.id)
    .sort((a, b) => speciesName(a).localeCompare(speciesName(b)));
  const option = (one: string) => (
    <option value={one} selected={one === value}>
      {speciesName(one)}
    </option>
  );
  return (
    <div class={problem ? 'field bad' : 'field'}>
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-invalid={problem !== undefined}
        aria-describedby={`${id}-trouble`}
        onChange={(event) => onInput(event.currentTarget.value)}
      >
        {value === '' && (
          <option value="" selected>
            Choose
          </option>
        )}
        {top.length > 0 && <optgroup label="In use">{top.map(option)}</optgroup>}
        <optgroup label="All">{rest.map(option)}</optgroup>
      </select>
      <Trouble of={problem} id={`${id}-trouble`} />
    </div>
  );
}
