import { shownLength } from '../core/length/shown-length.ts';
import { units } from './units.ts';

/** A length in the maker's units, with its fraction stacked and reduced. */
export function Length({ mm, bare = false }: { mm: number; bare?: boolean }) {
  const { negative, whole, numerator, denominator, unit } = shownLength(mm, units.value);
  const sign = negative ? '−' : '';
  const unitText = bare ? '' : ` ${unit}`;
  if (numerator === 0) return <span class="nowrap">{`${sign}${whole}${unitText}`}</span>;
  const spoken = `${sign}${whole === '0' ? '' : `${whole} `}${numerator}/${denominator}${unitText}`;
  return (
    <span class="nowrap">
      <span class="hidden-visually">{spoken}</span>
      <span aria-hidden="true">
        {sign}
        {whole === '0' ? '' : whole}
        <span class="frac">
          <span>{numerator}</span>
          <span>{denominator}</span>
        </span>
        {unitText}
      </span>
    </span>
  );
}
