import { isProblem } from '../../core/answer/problem.ts';
import { airOverTime } from '../../core/moisture/air-over-time.ts';
import { dryingVerdict } from '../../core/moisture/drying-verdict.ts';
import type { Board } from '../../store/records/board.ts';
import type { Shop } from '../../store/records/shop.ts';
import { correctedReadings } from './corrected-readings.ts';
import { targetById } from './moisture-targets.ts';

/** Whether a board is dry enough for where its piece will live, by its readings and the air in the shop; ms since the epoch. */
export function dryingOf(
  board: Pick<Board, 'readings'>,
  { air = [], driedFor }: Pick<Shop, 'air' | 'driedFor'>,
  now: number,
) {
  const target = targetById(driedFor);
  const equilibrium = airOverTime(air);
  const holdsAt = isProblem(equilibrium) ? undefined : equilibrium;
  const readings = correctedReadings(board);
  const found = dryingVerdict({
    readings,
    target: target.band,
    ...(holdsAt && { equilibrium: holdsAt.value }),
    now: Math.max(now, readings.at(-1)?.at ?? 0),
  });
  return { target, holdsAt, readings, found };
}
