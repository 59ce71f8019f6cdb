import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { celsius } from '../../core/answer/quantity.ts';
import { adhesiveTimes } from '../../core/gluing/adhesive-times.ts';
import { glueUp } from '../../core/gluing/glue-up.ts';
import { Amount } from '../../ui/amount.tsx';
import { Facts } from '../../ui/facts.tsx';
import { Reason } from '../../ui/reason.tsx';
import { SayList } from '../../ui/say-list.tsx';
import { sayRange } from '../../ui/say-range.ts';
import { runOf } from '../glue/glue-events.ts';
import { PhaseList } from '../glue/phase-list.tsx';
import { PlanAnswer } from '../glue/plan-answer.tsx';
import { type Glue, planStage, usualGlue } from '../glue/plan-stage.ts';
import { stagesOfPiece } from '../glue/stages-of-piece.ts';
import type { SheetRecords } from './read-sheet.ts';
import { SheetPart } from './sheet-part.tsx';

/** Every glue-up of the piece in order: what is still to come with its glue, time and clamps; what is begun with its clock. */
export function GlueOnSheet({ of: { piece, plan, glueups } }: { of: SheetRecords }) {
  const stages = stagesOfPiece(piece, plan, shop.value);
  const own = glueups.filter(({ pieceId }) => pieceId === piece.id);
  const toCome = stages.filter(({ id }) => !own.some(({ stage }) => stage === id));
  const glue = usualGlue(glueups);
  const now = Date.now();
  return (
    <SheetPart title="Glue-ups" missing="Nothing to glue yet.">
      {(toCome.length > 0 || own.length > 0) && (
        <>
          {own.map((glueup) => {
            const run = runOf(glueup);
            return (
              <section class="task">
                <h2>{glueup.name}</h2>
                {isProblem(run) ? <Reason of={run} /> : <PhaseList phases={run.phases} now={now} glueup={glueup} />}
              </section>
            );
          })}
          {toCome.length > 0 && <Times of={glue} />}
          {toCome.map((stage) => (
            <section class="task">
              <h2>{stage.name}</h2>
              <PlanAnswer plan={planStage(stage, glue, shop.value)} />
            </section>
          ))}
        </>
      )}
    </SheetPart>
  );
}

/** What the glue gives, whatever is glued. */
function Times({ of: { adhesive, celsius: degrees, label } }: { of: Glue }) {
  const times = adhesiveTimes(adhesive, degrees, label);
  const run = isProblem(times) ? times : glueUp(times.value, { startedAt: 0 });
  if (isProblem(times) || isProblem(run)) return null;
  return (
    <section class="task">
      <h2>
        {adhesive.name} at <Amount of={celsius(degrees)} />
      </h2>
      <Facts rows={run.phases.map(({ title, takes }) => [title, sayRange(takes, 'seconds')])} />
      <SayList of={adhesive.cautions} look="caution small" />
    </section>
  );
}
