import { routeTo } from '../../app/routes.ts';
import { assumedWarp } from '../../core/breakdown/assumed-warp.ts';
import type { RoughBoard } from '../../core/breakdown/problem-types.ts';
import type { Board } from '../../store/records/board.ts';
import { Length } from '../../ui/length.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';

/** Says what was assumed of a board that no straightedge has lain on. */
export function AssumedWarp({ board, planned }: { board: Board; planned: RoughBoard }) {
  const { cup, bow } = board.warp ?? {};
  if (cup !== undefined && bow !== undefined) return null;
  const assumed = assumedWarp(planned.width, planned.length);
  return (
    <details class="working">
      <summary>
        {cup === undefined && (
          <>
            Cup <Length mm={assumed.cup.value} />
          </>
        )}
        {cup === undefined && bow === undefined && ', '}
        {bow === undefined && (
          <>
            {cup === undefined ? 'bow' : 'Bow'} <Length mm={assumed.bow.value} />
          </>
        )}{' '}
        assumed
      </summary>
      {cup === undefined && <ShowWorking of={assumed.cup.working} label="Cup" />}
      {bow === undefined && <ShowWorking of={assumed.bow.working} label="Bow" />}
      <a class="button" href={routeTo('stock', board.id)}>
        Measure it
      </a>
    </details>
  );
}
