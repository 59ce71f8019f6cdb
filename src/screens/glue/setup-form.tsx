import { useState } from 'preact/hooks';
import { askToNotify } from '../../app/ask-to-notify.ts';
import { useDraft } from '../../app/draft.ts';
import { go } from '../../app/routes.ts';
import { shop } from '../../app/shop.ts';
import { isProblem, type Problem } from '../../core/answer/problem.ts';
import type { Glueup } from '../../store/records/glueup.ts';
import type { Piece } from '../../store/records/piece.ts';
import { Button } from '../../ui/button.tsx';
import { Screen } from '../../ui/screen.tsx';
import { Trouble } from '../../ui/trouble.tsx';
import { units } from '../../ui/units.ts';
import { questions } from '../questions.ts';
import { AdhesiveEntries } from './adhesive-entries.tsx';
import { forStage, type GlueForm, withStage } from './glue-form.ts';
import { PlanAnswer } from './plan-answer.tsx';
import { PlanDetails } from './plan-details.tsx';
import { type GluePlan, planGlueUp } from './plan-glue-up.ts';
import { coreProblem, type ReadGlue, readGlueForm } from './read-glue-form.ts';
import { SeamEntries } from './seam-entries.tsx';
import { StagePick } from './stage-pick.tsx';
import type { Progress } from './stage-progress.ts';
import type { PieceStage } from './stages-of-piece.ts';
import { startedGlueUp } from './started-glue-up.ts';
import { storeStart } from './write-glue-up.ts';

/** What the piece and the records say. */
interface Props {
  piece: Piece | undefined;
  stages: readonly PieceStage[];
  progress: Progress;
  glueups: readonly Glueup[];
  /** The form before anything is typed or picked. */
  usual: GlueForm;
}

/** What each part of the form gets: what it rests on, the form as typed and as read, and how to change it. */
export interface FormProps extends Props {
  readonly form: GlueForm;
  readonly read: ReadGlue;
  readonly plan: GluePlan;
  change(part: Partial<GlueForm>): void;
  /** Another stage is glued: by its id, empty for one that is typed. */
  pick(stage: string): void;
  /** What is wrong with one entry, by its path. */
  trouble(entry: string): Problem | undefined;
  /** What an entry for words or a number needs. */
  entry(name: 'celsius' | 'across' | 'outerBoard' | 'caul' | 'name'): {
    readonly value: string;
    readonly problem: Problem | undefined;
    onInput(text: string): void;
  };
}

/** Before the glue: what is glued, with what, and whether time, glue and clamps are enough. */
export function SetupForm(given: Props) {
  const { piece, stages, progress, usual } = given;
  const draft = useDraft<Partial<GlueForm>>(`glue-form-3-${piece?.id ?? 'new'}-${units.value.unit}`, {});
  const [tried, setTried] = useState(false);
  const typed = draft.value;
  if (!typed) return null;
  const stage = typed.stage === undefined ? progress.now[0] : stages.find(({ id }) => id === typed.stage);
  // What was never typed follows the piece and the air.
  const form: GlueForm = { ...(stage ? withStage(usual, stage) : usual), ...typed };
  const read = readGlueForm(form);
  const plan = planGlueUp(read, shop.value);
  const [first] = [...read.missing.values(), ...read.problems.values()];

  const start = async () => {
    setTried(true);
    if (first) return;
    const glueup = startedGlueUp(form, read, plan, piece, Date.now());
    if (isProblem(glueup)) return;
    void askToNotify();
    try {
      await storeStart(glueup);
      go('glue', glueup.id);
      draft.clear();
    } catch {
      // Not stored: the shell keeps and shows it; the form stays as it is.
    }
  };

  // With its stage: what is typed for one doesn't go over to the next.
  const change = (part: Partial<GlueForm>) => draft.set({ stage: form.stage, ...typed, ...part });
  const trouble = (entry: string) =>
    read.problems.get(entry) ?? (tried ? read.missing.get(entry) : undefined) ?? coreProblem(plan, entry);
  const props: FormProps = {
    ...given,
    form,
    read,
    plan,
    change,
    pick: (id) => draft.set(forStage(typed, id)),
    trouble,
    entry: (name) => ({ value: form[name], problem: trouble(name), onInput: (text) => change({ [name]: text }) }),
  };
  return (
    <Screen
      question={questions.glue}
      kicker={piece ? `Glue-up · ${piece.name}` : 'Glue-up'}
      action={
        <Button look="big now" disabled={isProblem(plan.times)} onClick={start}>
          Start spreading
        </Button>
      }
    >
      <PlanAnswer plan={plan} />
      {tried && <Trouble of={first} />}
      <StagePick {...props} />
      <SeamEntries {...props} />
      <AdhesiveEntries {...props} />
      <PlanDetails {...props} />
    </Screen>
  );
}
