import { useNow } from '../../app/now.ts';
import { Pick, TextField } from '../../ui/fields.tsx';
import { RunningList, runningOf } from './running-list.tsx';
import type { FormProps } from './setup-form.tsx';
import type { PieceStage } from './stages-of-piece.ts';

/** Which stage is glued: those of the piece in their order, or one by another name. */
export function StagePick({ form, pick, entry, piece, stages, progress, glueups }: FormProps) {
  const chosen = stages.find(({ id }) => id === form.stage);
  const waitsFor = (stage: PieceStage) =>
    stages.filter(({ id }) => stage.needs.includes(id) && !progress.ready.has(id)).map(({ name }) => name);
  const note = (stage: PieceStage) => {
    if (progress.ready.has(stage.id)) return ' (done)';
    if (progress.begun.has(stage.id)) return ' (begun)';
    return waitsFor(stage).length > 0 ? ' (waits)' : '';
  };
  const now = useNow();
  const open = glueups.filter((one) => piece && one.pieceId === piece.id && one.restedAt === undefined);
  return (
    <>
      <RunningList of={runningOf(open, now)} />
      {stages.length > 0 && (
        <Pick
          label="What is glued"
          value={form.stage}
          options={[
            ...stages.map((stage) => ({ value: stage.id, label: stage.name + note(stage) })),
            { value: '', label: 'Something else' },
          ]}
          onInput={pick}
        />
      )}
      {chosen && waitsFor(chosen).length > 0 && <p class="soft">Waits for {waitsFor(chosen).join(', ')}.</p>}
      {chosen?.guessed && <p class="soft">No plan yet: strips as wide as your shop rips them.</p>}
      {!chosen && <TextField label="Name of the glue-up" {...entry('name')} />}
    </>
  );
}
