import { routeTo } from '../../app/routes.ts';
import { assumedWarp } from '../../core/breakdown/assumed-warp.ts';
import type { RoughBoard } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';

/** Says what was assumed of a board that no straightedge has lain on. */
export function AssumedWarp({ board, planned }: { board: Board; planned: RoughBoard }) {
  const unknown = (['cup', 'bow'] as const).filter((kind) => board.warp?.[kind] === undefined);
  if (unknown.length === 0) return null;
  const assumed = assumedWarp(planned.width, planned.length);
  return (
    <details class="working">
      <summary>
        Assumed: {unknown.map((kind, at) => [at > 0 && ', ', `${kind} `, <Length mm={assumed[kind].value} />])}
      </summary>
      {unknown.map((kind) => (
        <ShowWorking of={assumed[kind].working} label={`Assumed ${kind}`} />
      ))}
      <a class="button" href={routeTo('stock', board.id)}>
        Measure it
      </a>
    </details>
  );
}
