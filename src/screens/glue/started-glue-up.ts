import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import { freshRecord } from '../../store/records/fresh-record.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Piece } from '../../store/records/piece.ts';
import type { Fields } from '../../store/records/record.ts';
import { phasesOf } from './glue-events.ts';
import type { GlueForm } from './glue-form.ts';
import type { GluePlan } from './plan-glue-up.ts';
import type { ReadGlue } from './read-glue-form.ts';

/** The glue-up as it is kept from the moment the first glue is spread; a Problem when it must not or can't begin. */
export function startedGlueUp(
  form: GlueForm,
  read: ReadGlue,
  plan: GluePlan,
  piece: Piece | undefined,
  now: number,
): Outcome<Glueup> {
  const { times, work, setting } = plan;
  if (isProblem(times)) return times;
  // Without seams it is for the clock alone.
  if (isProblem(work) && read.seams.length > 0) return work;
  const name = form.name.trim() || 'Glue-up';
  const { label } = read;
  const given: Fields<Glueup> = {
    ...(piece && { pieceId: piece.id }),
    name: piece ? `${piece.name}: ${name}` : name,
    stage: form.stage || name,
    adhesive: read.adhesive.id,
    celsius: read.celsius,
    seams: read.seams,
    ...(Object.keys(label).length > 0 && { label }),
    ...(setting > 0 && { clamps: setting }),
    startedAt: now,
    phases: phasesOf(times.value).map((phase) => (phase.name === 'open' ? { ...phase, startedAt: now } : phase)),
    log: [{ at: now, text: 'Spreading begun.' }],
  };
  return freshRecord(given, now);
}
