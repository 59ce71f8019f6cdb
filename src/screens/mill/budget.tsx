import { routeTo } from '../../app/routes.ts';
import { isProblem, type Outcome } from '../../core/answer/problem.ts';
import type { ThicknessBudget } from '../../core/milling/thickness-budget.ts';
import type { Board } from '../../store/records/board.ts';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';

/** Where the thickness is there, gaining less than this is not worth a line, in mm. */
const worthSaying = 0.5;

const bySpare = (budgets: readonly ThicknessBudget[]) => [...budgets].sort((a, b) => a.spare - b.spare);

interface Props {
  of: Outcome<readonly ThicknessBudget[]>;
  /** Boards whose cup or bow nobody has measured. */
  assumed: readonly Board[];
}

/** Whether the thickness is in the boards: the answer large, then blank by blank, the scarcest first. */
export function BudgetAnswer({ of, assumed }: Props) {
  if (isProblem(of))
    return (
      <div class="answer now">
        <Trouble of={of} />
      </div>
    );
  const [scarcest] = bySpare(of);
  if (!scarcest) return null;
  const thin = of.filter(({ spare }) => spare < 0).length;
  const enough = assumed.length > 0 ? 'Likely thick enough' : 'All thick enough';
  return (
    <>
      <div class={thin > 0 ? 'answer now' : 'answer'}>
        <p class="figure words">{thin > 0 ? `${thin} of ${of.length} too thin` : enough}</p>
        <p>
          Scarcest: {scarcest.label}, <Spare mm={scarcest.spare} />.
        </p>
        {assumed.length > 0 && (
          <p>
            Warp is assumed, not measured, of{' '}
            {assumed.map(({ id, chalk }, at) => (
              <>
                {at > 0 && ', '}
                <a href={routeTo('stock', id)}>{chalk}</a>
              </>
            ))}
            .
          </p>
        )}
      </div>
      <Budgets of={of} open={thin > 0} />
    </>
  );
}

/** What each blank reaches against what its part needs, with what to do first. */
export function Budgets({ of, open = false }: { of: readonly ThicknessBudget[]; open?: boolean }) {
  return (
    <details class="working" open={open}>
      <summary>Thickness still in each blank</summary>
      <ul class="budgets">
        {bySpare(of).map(({ id, label, need, reachable, spare, remedies }) => (
          <li key={id}>
            <p>
              <b>{label}</b>: <Spare mm={spare} />
            </p>
            <p class="soft">
              Reaches <Length mm={reachable.value} />, needs <Length mm={need} />.
            </p>
            {remedies
              .filter(({ gain }) => spare < 0 || gain >= worthSaying)
              .map(({ kind, say, enough }) => (
                <p key={kind}>
                  <Say phrase={say} />
                  {spare < 0 && enough && <b> Enough.</b>}
                </p>
              ))}
            <ShowWorking of={reachable.working} />
          </li>
        ))}
      </ul>
    </details>
  );
}

function Spare({ mm }: { mm: number }) {
  return (
    <>
      <Length mm={Math.abs(mm)} /> {mm < 0 ? 'too thin' : 'to spare'}
    </>
  );
}
