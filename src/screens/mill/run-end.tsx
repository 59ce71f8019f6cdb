import { undoable } from '../../app/notices.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { percent } from '../../core/answer/quantity.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { runOutcome } from '../../core/milling/run-outcome.ts';
import type { StripRecord } from '../../core/milling/strip-records.ts';
import type { Milling } from '../../store/records/milling.ts';
import type { Piece } from '../../store/records/piece.ts';
import { changeShop } from '../../store/shop.ts';
import { Amount } from '../../ui/amount.tsx';
import { Button } from '../../ui/button.tsx';
import { Length } from '../../ui/length.tsx';
import { Screen } from '../../ui/screen.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { WithReason } from '../../ui/with-reason.tsx';
import './mill.css';
import { inputOfRun, stepsOfRun } from './steps-of-run.ts';
import { StockCard } from './stock-card.tsx';
import { loseStrips } from './store-progress.ts';

interface Props {
  run: Milling;
  piece: Piece;
  onSteps(): void;
  onAgain(): void;
}

/** After the run: the yield against the plan, what each strip came to, and what this maker's allowances really are. */
export function RunEnd({ run, piece, onSteps, onAgain }: Props) {
  const outcome = runOutcome(inputOfRun(run), stepsOfRun(run), run.measured ?? [], run.lost ?? {});
  const { allowances } = shop.value;
  return (
    <Screen
      question="What did it come to?"
      kicker={`Mill · ${piece.name}`}
      action={
        <a class="button big now" href={routeTo('glue', piece.id)}>
          Glue up
        </a>
      }
    >
      {isProblem(outcome) ? (
        <Trouble of={outcome} />
      ) : (
        <>
          <div class={outcome.toMake.length > 0 ? 'answer now' : 'answer'}>
            <p class="figure words">{outcome.toMake.length > 0 ? 'Not all there' : 'All milled'}</p>
            {outcome.toMake.map(({ label, missingWidth }) => (
              <p key={label}>
                {label} lacks <Length mm={missingWidth} /> of width.
              </p>
            ))}
            <p>
              Yield <Amount of={percent(outcome.yield.real.value)} />, planned{' '}
              <Amount of={percent(outcome.yield.planned.value)} />.
            </p>
            <ShowWorking of={outcome.yield.real.working} />
          </div>
          {outcome.toMake.length > 0 && (
            <a class="button big" href={routeTo('breakdown', piece.id)}>
              Plan what is missing
            </a>
          )}
          <StockCard run={run} />
          <Offer
            name="Jointing both edges of a strip"
            field="edge"
            now={allowances.edge}
            really={outcome.allowances.edge}
          />
          <Offer name="Cleaning one face" field="face" now={allowances.face} really={outcome.allowances.face} />
          <h2>Strip by strip</h2>
          <ul class="rows">
            {outcome.strips.map((record) => (
              <StripLine key={record.strip.id} run={run} of={record} />
            ))}
          </ul>
        </>
      )}
      <div class="buttons">
        <Button onClick={onSteps}>Look at the steps</Button>
        <Button onClick={onAgain}>Begin a new run</Button>
      </div>
    </Screen>
  );
}

interface OfferProps {
  name: string;
  field: 'edge' | 'face';
  now: number;
  really: Worked | undefined;
}

/** What an allowance turned out to be, to be taken for the next plan. */
function Offer({ name, field, now, really }: OfferProps) {
  if (!really || Math.abs(really.value - now) < 0.05) return null;
  const allow = (value: number) =>
    changeShop((stored) => ({ ...stored, allowances: { ...stored.allowances, [field]: value } }));
  const take = () => undoable(allow(really.value), 'The next plan allows this.', () => allow(now));
  return (
    <section class="card" aria-label={name}>
      <p>
        {name} took{' '}
        <b>
          <Length mm={really.value} />
        </b>
        ; plans allow <Length mm={now} />.
      </p>
      <ShowWorking of={really.working} />
      <Button onClick={take}>Allow this from now on</Button>
    </section>
  );
}

function StripLine({ run, of: { strip, finishedWidth, cleanThickness, lost } }: { run: Milling; of: StripRecord }) {
  const { id, label, finished, part } = strip;
  const lose = (reason: string | undefined) => loseStrips(run, [id], reason);
  return (
    <li>
      <div>
        <p>
          <b>{label}</b>
        </p>
        <p class="soft">
          {finishedWidth === undefined ? 'Planned ' : 'Came to '}
          <Length mm={finishedWidth ?? finished} bare /> × <Length mm={part.thickness} />
          {finishedWidth !== undefined && (
            <>
              , planned <Length mm={finished} /> wide
            </>
          )}
          {cleanThickness !== undefined && (
            <>
              , clean at <Length mm={cleanThickness} />
            </>
          )}
        </p>
        {lost !== undefined && <p>Lost: {lost}</p>}
      </div>
      {lost === undefined ? (
        <WithReason label="Not usable" ask="Why" action="It is lost" onReason={lose} />
      ) : (
        // A write that fails is kept and shown by the shell.
        <Button look="plain" onClick={() => lose(undefined).catch(() => {})}>
          Usable after all
        </Button>
      )}
    </li>
  );
}
