import { isProblem } from '../../core/answer/problem.ts';
import { airOverTime } from '../../core/moisture/air-over-time.ts';
import { dryingVerdict } from '../../core/moisture/drying-verdict.ts';
import type { Board } from '../../store/records/board.ts';
import type { Shop } from '../../store/records/shop.ts';
import { correctedReadings } from './corrected-readings.ts';
import { targetById } from './moisture-targets.ts';

/** How boards are judged in this shop now: the band for where pieces will live, what its air holds wood at, and the verdict. */
export function dryingIn({ air = [], driedFor }: Pick<Shop, 'air' | 'driedFor'>, now: number) {
  const target = targetById(driedFor);
  const equilibrium = airOverTime(air, now);
  const holdsAt = isProblem(equilibrium) ? undefined : equilibrium;
  return {
    target,
    holdsAt,
    /** Whether a board is dry enough, by its readings. */
    verdict(board: Pick<Board, 'readings'>) {
      const readings = correctedReadings(board);
      const found = dryingVerdict({
        readings,
        target: target.band,
        ...(holdsAt && { equilibrium: holdsAt.value }),
        now: Math.max(now, readings.at(-1)?.at ?? 0),
      });
      return { readings, found };
    },
  };
}
