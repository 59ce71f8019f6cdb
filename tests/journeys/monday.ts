import { tickAll } from '../../src/core/steps/progress.ts';
import { timerOf, withEvent } from '../../src/screens/glue/glue-events.ts';
import { backupText } from '../../src/store/backup/backup-text.ts';
import { schemaVersion } from '../../src/store/migrations/list.ts';
import type { Plan } from '../../src/store/records/plan.ts';
import type { Timer } from '../../src/store/records/timer.ts';
import { finish, hour, minute, piece, timer } from '../screens/bench/records.ts';
import { started, typed } from '../screens/glue/samples.ts';
import { board, plan, run, sequence } from '../screens/mill/records.ts';

/** Monday, 2 March 2026, eight in the morning. */
export const eight = new Date('2026-03-02T08:00:00').getTime();

const day = 24 * hour;
const { steps } = sequence(plan('one'));

/** The chest's rails wait for the table saw while the seams of its lid dry. */
export const seams = steps.findIndex(({ id }) => id === 'glue-rest:rack');
export const crosscut = steps.findIndex(({ stage }) => stage === 'crosscut');

/** What is left of the week before: a chest being milled, a cabinet in the clamps and short of wood, a box between two coats. */
export async function mondaysBackup(): Promise<string> {
  const chest = piece('chest', 'Blanket chest');
  const cabinet = piece('cabinet', 'Tool cabinet');
  const box = piece('box', 'Letter box');

  const ticks = steps.slice(0, seams).reduce((so, step) => tickAll(so, step, eight - day), {});
  const milling = run(plan('chest-plan'), { id: 'chest-run', pieceId: chest.id, ticks });
  const clampedAt = eight - 30 * minute;
  const spread = started(typed({ name: 'Door panel' }), clampedAt - 4 * minute, cabinet);
  const door = withEvent({ ...spread, id: 'door', revision: 1, stage: 'p2/1' }, 'clamped', clampedAt);
  const clamps: Timer = {
    ...(timerOf(door, clampedAt) as Timer),
    id: 'timer-door',
    revision: 1,
  };
  const seamsDry: Timer = {
    ...timer('milling', milling.id, 'Let the seams dry', eight + 150 * minute, steps[seams]?.id),
    name: chest.name,
  };
  // Coated on Sunday at seven in the evening; 12 h at least, 48 h at most.
  const coatDry: Timer = {
    ...timer('finish', 'box-finish', 'Before coat 2', eight - hour),
    startedAt: eight - 13 * hour,
  };
  const ofChest: Plan = { ...plan('chest-plan'), pieceId: chest.id };
  const short = [{ part: 'p2', unit: 1, missingWidth: 31 }];
  const ofCabinet: Plan = { ...plan('cabinet-plan'), pieceId: cabinet.id, short };

  return backupText(
    {
      kinds: {
        board: [
          board('a1'),
          board('a2'),
          board('a3', {
            readings: [
              { at: eight - 10 * day, percent: 20 },
              { at: eight - hour, percent: 12 },
            ],
          }),
        ],
        piece: [chest, cabinet, box],
        plan: [ofChest, ofCabinet],
        milling: [milling],
        glueup: [door],
        finish: [finish('box-finish', box.id, ['sand-120', 'sand-180', 'sand-220', 'sample', 'coat-1', 'rags-1'])],
        timer: [seamsDry, coatDry, clamps],
      },
      removed: [],
    },
    schemaVersion,
    eight,
  );
}
