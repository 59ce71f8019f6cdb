import { percent } from '../../core/answer/quantity.ts';
import { Facts } from '../../ui/facts.tsx';
import type { PieceSeasons } from './seasons-of-piece.ts';

/** Moisture of the wood today, with where that comes from, and in both seasons. */
export function SeasonFacts({ of: { today, from, dry, wet } }: { of: PieceSeasons }) {
  return (
    <Facts
      rows={[
        [
          <>
            Today <span class="soft small">{from}</span>
          </>,
          percent(today),
        ],
        ['Dry season', percent(dry)],
        ['Damp season', percent(wet)],
      ]}
    />
  );
}
