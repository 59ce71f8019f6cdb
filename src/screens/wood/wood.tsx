import { useRef, useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { offerUndo } from '../../app/notices.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { dimensionalChange } from '../../core/movement/dimensional-change.ts';
import type { OwnWood } from '../../store/records/shop.ts';
import { changeShop } from '../../store/shop.ts';
import { Answer } from '../../ui/answer.tsx';
import { Button } from '../../ui/button.tsx';
import { NumberField, TextField, Tick } from '../../ui/fields.tsx';
import { FiguresNote } from '../../ui/figures-note.tsx';
import { ownWoods } from '../../ui/own-woods.ts';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { units } from '../../ui/units.ts';
import { woodOf } from '../../ui/wood-by-id.ts';
import { questions } from '../questions.ts';
import { emptyForm, figures, formOf, readWood, type WoodForm } from './wood-form.ts';

const labels = {
  tangential: ['Tangential', '%, flat-sawn'],
  radial: ['Radial', '%, quarter-sawn'],
  volumetric: ['Volumetric', '%'],
  gravity: ['Specific gravity', 'at 12%'],
} as const;

const setWoods = (edit: (woods: readonly OwnWood[]) => readonly OwnWood[]) =>
  changeShop((now) => ({ ...now, woods: edit(now.woods ?? []) }));

/** Woods that the table lacks: from then on they can be chosen wherever a wood is. */
export default function WoodScreen() {
  const draft = useDraft<WoodForm>('wood-form-1', emptyForm);
  const [tried, setTried] = useState(false);
  const entries = useRef<HTMLElement>(null);
  const form = draft.value;
  if (!form) return null;
  const read = readWood(form);
  const field = (name: Exclude<keyof WoodForm, 'openPores'>) => ({
    value: form[name],
    problem: tried && isProblem(read) && read.field === name ? read : undefined,
    onInput: (text: string) => draft.set({ ...form, [name]: text }),
  });
  const known = !isProblem(read) && ownWoods.value.some(({ name }) => name === read.name);
  const store = async () => {
    setTried(true);
    if (isProblem(read)) return;
    try {
      await setWoods((woods) => [...woods.filter(({ name }) => name !== read.name), read]);
      setTried(false);
      draft.clear();
    } catch {
      // Not stored: the shell keeps the change and shows it, and the form stays as it was typed.
    }
  };
  return (
    <Screen
      question={questions.wood}
      kicker="Woods"
      action={
        <Button look="big" onClick={() => history.back()}>
          Go back
        </Button>
      }
    >
      {ownWoods.value.map((wood) => (
        <WoodCard
          key={wood.name}
          wood={wood}
          onChange={() => {
            draft.set(formOf(wood));
            entries.current?.scrollIntoView();
          }}
        />
      ))}
      <section class="card" aria-label="Add a wood" ref={entries}>
        <h2>Add a wood</h2>
        <p class="soft">Shrinkage from green to ovendry, off a data sheet. One will do.</p>
        <TextField label="Name" {...field('name')} />
        <div class="fields">
          {figures.map((name) => (
            <NumberField label={labels[name][0]} hint={labels[name][1]} {...field(name)} />
          ))}
        </div>
        <Tick
          label="Open pores: takes more finish"
          checked={form.openPores}
          onInput={(openPores) => draft.set({ ...form, openPores })}
        />
        <Button look="big now" onClick={store}>
          {known ? 'Change it' : 'Add it'}
        </Button>
      </section>
    </Screen>
  );
}

/** How far a board of it moves, to hold against what the hand knows of other woods. */
function WoodCard({ wood, onChange }: { wood: OwnWood; onChange(): void }) {
  const width = units.value.unit === 'in' ? 304.8 : 300;
  const cut = wood.radial && !wood.tangential ? 'quarter' : 'flat';
  const moved = dimensionalChange({ figures: woodOf(wood), cut, width, from: 8, to: 12 });
  const remove = () =>
    // A write that fails is kept and shown by the shell.
    void setWoods((woods) => woods.filter(({ name }) => name !== wood.name)).then(
      () => offerUndo(`${wood.name} deleted.`, () => void setWoods((woods) => [...woods, wood]).catch(() => {})),
      () => {},
    );
  return (
    <section class="card" aria-label={wood.name}>
      <h2>{wood.name}</h2>
      {!isProblem(moved) && (
        <Answer
          label={<Say phrase={phrase`Swells from 8% to 12%, ${cut}-sawn, ${mm(width)} wide, by`} />}
          of={mm(moved.value.change)}
          working={moved.working}
        >
          <FiguresNote estimated={moved.value.rate.estimated} sources={[]} />
        </Answer>
      )}
      <div class="buttons">
        <Button onClick={onChange}>Change</Button>
        <Button onClick={remove}>Delete</Button>
      </div>
    </section>
  );
}
