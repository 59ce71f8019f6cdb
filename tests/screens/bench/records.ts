import { coatSchedule } from '../../../src/core/finishing/coat-schedule.ts';
import type { PieceRecords } from '../../../src/screens/bench/job-thread.ts';
import type { BenchRecords } from '../../../src/screens/bench/what-now.ts';
import { keptSteps } from '../../../src/screens/finish/finish-steps.ts';
import type { Finish } from '../../../src/store/records/finish.ts';
import type { Glueup } from '../../../src/store/records/glueup.ts';
import type { Piece } from '../../../src/store/records/piece.ts';
import type { Timer } from '../../../src/store/records/timer.ts';
import { finishById } from '../../../src/tables/finishes.ts';
import { piece as chest, now, sure } from '../mill/records.ts';

export { now };
export const minute = 60_000;
export const hour = 60 * minute;

const stamps = (id: string) => ({ id, created: now, updated: now, revision: 1 });

export const piece = (id: string, name = id): Piece => ({ ...chest, ...stamps(id), name });

export const ofPiece = (id: string, given: Partial<PieceRecords> = {}): PieceRecords => ({
  piece: piece(id),
  plan: undefined,
  milling: undefined,
  finish: undefined,
  squares: [],
  glueups: [],
  ...given,
});

export const bench = (given: Partial<BenchRecords>): BenchRecords => ({
  boardCount: 3,
  pieces: [],
  timers: [],
  glueups: [],
  ...given,
});

export const timer = (kind: Timer['for']['kind'], id: string, phase: string, endsAt: number, step?: string): Timer => ({
  ...stamps(`timer of ${id} ${phase}`),
  name: id,
  for: { kind, id },
  phase,
  startedAt: now - hour,
  endsAt,
  ...(step !== undefined && { step }),
});

/** How far: spread, clamped, unclamped, rested. */
export function glueup(id: string, pieceId: string, stage: string, far: 0 | 1 | 2 | 3): Glueup {
  const names = ['open', 'closed', 'clamp', 'rest', 'cure'];
  const begun = [1, 3, 4, 4][far] ?? 0;
  return {
    ...stamps(id),
    pieceId,
    name: id,
    stage,
    adhesive: 'pva-interior',
    celsius: 20,
    seams: [],
    startedAt: now - 2 * hour,
    phases: names.map((name, at) => ({ name, seconds: 600, ...(at < begun && { startedAt: now - hour }) })),
    ...(far > 1 && { unclampedAt: now - hour }),
    ...(far > 2 && { restedAt: now - minute }),
  };
}

const all = finishById('oil-varnish');

/** Two coats of a wiped varnish with drying oil: rags after each. */
export function finish(id: string, pieceId: string, done: readonly string[]): Finish {
  if (!all) throw new Error('This finish is gone from the table.');
  const steps = sure(coatSchedule({ finish: all, coats: 2, firstGrit: 120, gritsOwned: [120, 180, 220] }));
  return {
    ...stamps(id),
    pieceId,
    kind: all.id,
    coats: 2,
    area: 1,
    containers: [],
    steps: keptSteps(steps, [], []),
    ticks: Object.fromEntries(done.map((step) => [step, { pieces: [], at: now }])),
  };
}
