import { useDraft } from '../../app/draft.ts';
import { undoable } from '../../app/notices.ts';
import { useNow } from '../../app/now.ts';
import { seconds } from '../../core/answer/quantity.ts';
import type { Shop } from '../../store/records/shop.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { changeShop } from '../../store/shop.ts';
import { Amount } from '../../ui/amount.tsx';
import { Button } from '../../ui/button.tsx';
import { Card } from '../../ui/card.tsx';
import { type Laps, lapEnds, nextLap } from './dry-run-laps.ts';
import { withDryRun } from './glue-pace.ts';
import type { GluePlan } from './plan-glue-up.ts';

interface Props {
  plan: GluePlan;
  seams: number;
  hands: number;
  areaM2: number;
}

/** A stopwatch for a run without glue. Its instants are kept, so that a killed tab loses none of it. */
export function DryRunCard(props: Props) {
  const draft = useDraft<Laps>('glue-dry-run-1', []);
  const laps = draft.value;
  if (!laps) return null;
  return (
    <Card title="Dry run">
      {laps.length === 0 ? (
        <>
          <p>Without glue: spread, close, clamp. Later glue-ups are timed at your pace.</p>
          <Button look="big" onClick={() => draft.set([Date.now()])}>
            Start a dry run
          </Button>
        </>
      ) : (
        <Running {...props} laps={laps} onLaps={draft.set} onOver={() => draft.clear()} />
      )}
    </Card>
  );
}

interface RunningProps extends Props {
  laps: Laps;
  onLaps(laps: Laps): void;
  onOver(): void;
}

function Running({ plan: { setting }, seams, hands, areaM2, laps, onLaps, onOver }: RunningProps) {
  const now = useNow();
  const lap = nextLap(laps);

  const take = async () => {
    const taken = [...laps, Date.now()];
    if (nextLap(taken)) return onLaps(taken);
    const done = { spread: areaM2, close: seams, clamp: setting };
    let before: Shop['pace'];
    const learn = (shop: Shop) => {
      before = shop.pace;
      return { ...shop, pace: withDryRun(before, taken, done, hands) };
    };
    await undoable(changeShop(learn), 'Your pace is learnt from this run.', () =>
      changeShop((shop) => withOptional(shop, 'pace', before)),
    );
    onOver();
  };

  return (
    <>
      <p class="figure countdown" role="timer">
        <Amount of={seconds(Math.max(0, now - (laps.at(-1) ?? now)) / 1000)} />
      </p>
      <div class="buttons">
        <Button look="big now" onClick={take}>
          {lap && lapEnds[lap]}
        </Button>
        <Button look="big" onClick={onOver}>
          Delete this run
        </Button>
      </div>
    </>
  );
}
