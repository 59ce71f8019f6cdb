import { useRef, useState } from 'preact/hooks';
import { useDraft } from '../../app/draft.ts';
import { undoable } from '../../app/notices.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { mm } from '../../core/answer/quantity.ts';
import { dimensionalChange } from '../../core/movement/dimensional-change.ts';
import type { OwnWood } from '../../store/records/shop.ts';
import { changeShop } from '../../store/shop.ts';
import { Answer } from '../../ui/answer.tsx';
import { Button } from '../../ui/button.tsx';
import { TextField, Tick } from '../../ui/fields.tsx';
import { FiguresNote } from '../../ui/figures-note.tsx';
import { ownWoods } from '../../ui/own-woods.ts';
import { Say } from '../../ui/say.tsx';
import { Screen } from '../../ui/screen.tsx';
import { units } from '../../ui/units.ts';
import { woodOf } from '../../ui/wood-by-id.ts';
import { numbers, useEntries } from '../movement/entries.tsx';
import { questions } from '../questions.ts';
import { checkedWood } from './checked-wood.ts';

const figures = {
  tangential: ['Tangential', undefined, '%, flat-sawn'],
  radial: ['Radial', undefined, '%, quarter-sawn'],
  volumetric: ['Volumetric', undefined, '%'],
  gravity: ['Specific gravity', undefined, 'at 12%'],
} as const;
const unnamed = { name: '', openPores: false };

const setWoods = (edit: (woods: readonly OwnWood[]) => readonly OwnWood[]) =>
  changeShop((now) => ({ ...now, woods: edit(now.woods ?? []) }));

/** Woods that the table lacks: from then on they can be chosen wherever a wood is. */
export default function WoodScreen() {
  const { value: about, ...draft } = useDraft('wood-about-1', unnamed);
  const entries = useEntries('wood-1', figures, numbers);
  const [tried, setTried] = useState(false);
  const section = useRef<HTMLElement>(null);
  if (!about || !entries) return null;
  const read = entries.ask((values) => checkedWood({ ...about, ...values }), []);
  const trouble = tried && isProblem(read) ? read : undefined;
  const known = read && !isProblem(read) && ownWoods.value.some(({ name }) => name === read.name);
  const fill = ({ name, openPores = false, ...values }: OwnWood) => {
    draft.set({ name, openPores });
    entries.fill(values);
  };
  const store = async () => {
    setTried(true);
    if (!read || isProblem(read)) return;
    try {
      await setWoods((woods) => [...woods.filter(({ name }) => name !== read.name), read]);
      setTried(false);
      fill(unnamed);
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
            fill(wood);
            section.current?.scrollIntoView();
          }}
        />
      ))}
      <section class="card" aria-label="Add a wood" ref={section}>
        <h2>Add a wood</h2>
        <p class="soft">Shrinkage from green to ovendry, off a data sheet. One will do.</p>
        <TextField
          label="Name"
          value={about.name}
          problem={trouble?.field === 'name' ? trouble : undefined}
          onInput={(name) => draft.set({ ...about, name })}
        />
        {entries.fields(trouble?.field === 'name' ? undefined : trouble)}
        <Tick
          label="Open pores: takes more finish"
          checked={about.openPores}
          onInput={(openPores) => draft.set({ ...about, openPores })}
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
    undoable(
      setWoods((woods) => woods.filter(({ name }) => name !== wood.name)),
      `${wood.name} deleted.`,
      // One that was added anew by then stays.
      () => setWoods((woods) => (woods.some(({ name }) => name === wood.name) ? woods : [...woods, wood])),
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
