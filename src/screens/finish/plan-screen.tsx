import { useDraft } from '../../app/draft.ts';
import { routeTo } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { finishCautions, ragsTodo } from '../../core/finishing/finish-cautions.ts';
import { finishes as kept } from '../../store/finishes.ts';
import { airNow } from '../../store/records/air-now.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { SayList } from '../../ui/say-list.tsx';
import { Screen } from '../../ui/screen.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { units } from '../../ui/units.ts';
import { questions } from '../questions.ts';
import { AirEntries } from './air-entries.tsx';
import { AmountAnswer } from './amount-answer.tsx';
import { CanEntries } from './can-entries.tsx';
import { Containers } from './containers.tsx';
import { emptyForm, type FinishForm } from './finish-form.ts';
import type { Entry } from './form-props.ts';
import { KindEntries } from './kind-entries.tsx';
import { MixEntries } from './mix-entries.tsx';
import { OtherPieces } from './other-pieces.tsx';
import { planFinish } from './plan-finish.ts';
import { readFinishForm } from './read-finish-form.ts';
import { ScheduleEntries } from './schedule-entries.tsx';
import { Shapes } from './shapes.tsx';
import { Sides } from './sides.tsx';
import { startedFinish } from './started-finish.ts';

interface Props {
  piece: Piece;
  all: readonly Piece[];
  onStarted(): void;
}

/** How much of which finish a piece takes, which cans hold it, and what it costs. */
export function PlanScreen({ piece, all, onStarted }: Props) {
  const draft = useDraft<FinishForm>(`finish-plan-3-${piece.id}-${units.value.unit}`, emptyForm);
  if (!draft.value) return null;
  // A plan kept by an older version lacks what has been added since.
  const form = { ...emptyForm, ...draft.value };
  const read = readFinishForm(form, airNow(shop.value, Date.now()));
  const pieces = [piece, ...all.filter(({ id }) => id !== piece.id && form.others.includes(id))];
  const plan = planFinish(pieces, read);
  const started = startedFinish(pieces, form, read, plan);
  const at = (entry: string) =>
    read.problems.get(entry) ?? (isProblem(started) && started.field === entry ? started : undefined);
  const change = (part: Partial<FinishForm>) => draft.edit((now) => ({ ...now, ...part }));
  const field = (entry: Entry, text = form[entry] ?? '') => ({
    value: text,
    problem: at(entry),
    onInput: (typed: string) => change({ [entry]: typed }),
  });
  const props = { form, read, plan: isProblem(plan) ? undefined : plan, piece, all, at, field, change };

  const start = async () => {
    if (isProblem(started)) return;
    try {
      await kept.add(started);
      // The plan stays as typed, for the next time or for starting over; the air is that day's own.
      change({ celsius: '', humidity: '' });
      onStarted();
    } catch {
      // The shell keeps and shows what the phone did not take; the plan stays.
    }
  };

  return (
    <Screen
      question={questions.finish}
      kicker={`Finish · ${piece.name}`}
      action={
        <Button look="big now" disabled={read.problems.size > 0 || isProblem(started)} onClick={start}>
          Start the finish
        </Button>
      }
    >
      <div aria-live="polite" class="readout">
        {isProblem(plan) ? (
          <div class="answer">
            <Trouble of={plan} />
            {piece.parts.length === 0 && (
              <a class="button" href={routeTo('piece', piece.id)}>
                List its parts
              </a>
            )}
          </div>
        ) : (
          <AmountAnswer plan={plan} read={read} />
        )}
      </div>
      <KindEntries {...props} />
      <Containers {...props} />
      <Sides {...props} />
      <Shapes {...props} />
      <CanEntries {...props} />
      <AirEntries {...props} />
      <MixEntries {...props} />
      <ScheduleEntries {...props} />
      <OtherPieces {...props} />
      <Card title="Before you open the can">
        <SayList of={[...(read.finish.dryingOil ? [ragsTodo] : []), ...finishCautions(read.finish)]} look="caution" />
      </Card>
    </Screen>
  );
}
