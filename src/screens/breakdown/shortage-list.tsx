import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { boardFeet, mm } from '../../core/answer/quantity.ts';
import type { Working } from '../../core/answer/worked.ts';
import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import { type Purchase, purchasePhrase, shortages } from '../../core/breakdown/shortages.ts';
import type { Plan } from '../../store/records/plan.ts';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { inNames, type Names } from './names.ts';

/** What is short, why, and what to buy. */
export function ShortageList({ asked, plan, names }: { asked: BreakdownProblem; plan: Plan; names: Names }) {
  return (
    <ul class="rows" aria-label="What is short">
      {shortages(inNames(asked, names), inNames(plan, names)).map(({ part, units, reason, buy }) => (
        <li>
          <div>
            <p>
              <b>
                {part}
                {units > 1 && `, ${units} of them`}
              </b>
            </p>
            <p>
              <Say phrase={reason} />
            </p>
            {buy && (
              <>
                <p>
                  <Say phrase={purchasePhrase(buy)} />
                </p>
                <ShowWorking of={purchaseWorking(buy)} />
              </>
            )}
          </div>
        </li>
      ))}
    </ul>
  );
}

function purchaseWorking({ length, width, thickness, boardFeet: feet }: Purchase): Working {
  const by = phrase`${mm(length)} × ${mm(width)} × ${mm(thickness)}, in board feet of 144 cubic inches`;
  const holds = phrase`Flat, straight, clear boards of the rack’s usual width. Real ones vary: buy some more.`;
  return oneStep('board feet to buy', by, boardFeet(feet), ['geometry', 'nist-sp811'], holds).working;
}
