import type { ComponentChildren } from 'preact';
import { shop } from '../../app/shop.ts';
import { defaultShop, type Machine, type Shop, usualMitreWidth } from '../../store/records/shop.ts';
import { withOptional } from '../../store/records/with-optional.ts';
import { editShop } from '../../store/shop.ts';
import { Choice, optionsOf, Tick } from '../../ui/fields.tsx';
import { Screen } from '../../ui/screen.tsx';
import { SettledLength } from '../../ui/settled.tsx';
import { questions } from '../questions.ts';
import { ClampList } from './clamp-list.tsx';

const unitNames = optionsOf({ in: 'Inches', mm: 'Millimetres' });
const fractions = optionsOf({ 8: '1/8', 16: '1/16', 32: '1/32', 64: '1/64' });
const lights = optionsOf({ auto: 'As the phone', light: 'Day', dark: 'Evening', contrast: 'More contrast' });
const thumbs = optionsOf({ left: 'Left', right: 'Right' });

/** What comes off, and the most of it that is no slip, mm. */
const allowances = [
  ['edge', 'Jointing both edges of a strip', 25],
  ['length', 'Extra length on every part', 300],
  ['face', 'Cleaning one face', 10],
] as const;

/** Changes some of a group of the shop's settings; the others stay as they are stored. */
const change = <G extends 'units' | 'allowances' | 'strips'>(group: G, part: Partial<Shop[G]>) =>
  editShop((now) => ({ ...now, [group]: { ...now[group], ...part } }));

/** What is still as it was assumed becomes round in the new unit; what the maker has set stays. */
const changeUnit = (unit: Shop['units']['unit']) =>
  editShop((now) => {
    const [before, after] = [defaultShop(0, now.units.unit), defaultShop(0, unit)];
    const assumed = (['machines', 'allowances', 'strips', 'clamps'] as const).filter(
      (group) => JSON.stringify(now[group]) === JSON.stringify(before[group]),
    );
    return {
      ...now,
      ...Object.fromEntries(assumed.map((group) => [group, after[group]])),
      units: { ...now.units, unit },
    };
  });

const changeMachine = <M extends Machine>(machine: M, part: Partial<Shop['machines'][M]>) =>
  editShop(({ machines, ...now }) => ({
    ...now,
    machines: { ...machines, [machine]: { ...machines[machine], ...part } },
  }));

/** Whether there is such a machine, and what else to know of it when there is. */
function Owned({ machine, label, children }: { machine: Machine; label: string; children?: ComponentChildren }) {
  const { owned } = shop.value.machines[machine];
  return (
    <div class="card">
      <Tick label={label} checked={owned} onInput={(owned) => changeMachine(machine, { owned })} />
      {owned && children}
    </div>
  );
}

const Width = ({ machine, label }: { machine: 'jointer' | 'planer' | 'mitreSaw'; label: string }) => (
  <SettledLength
    label={label}
    value={shop.value.machines[machine].width ?? usualMitreWidth}
    limits={{ least: 50, most: 1500 }}
    onAccept={(width) => changeMachine(machine, { width })}
  />
);

interface SawProps {
  machine: 'tableSaw' | 'guidedSaw' | 'mitreSaw';
  label: string;
  children?: ComponentChildren;
}

const Saw = ({ machine, label, children }: SawProps) => (
  <Owned machine={machine} label={label}>
    <SettledLength
      label="Kerf"
      value={shop.value.machines[machine].kerf}
      limits={{ least: 0, most: 12 }}
      onAccept={(value) => changeMachine(machine, { kerf: value })}
    />
    {children}
  </Owned>
);

/** The shop's machines and their limits: what every plan and every step keeps to. */
export default function ShopScreen() {
  const { machines, units, strips, tapePrecision, theme, hand } = shop.value;
  return (
    <Screen question={questions.shop} kicker="Shop">
      <p class="soft">Kept as you type. Plans and milling stay within these limits.</p>
      <Choice label="Units" value={units.unit} options={unitNames} onInput={changeUnit} />
      {units.unit === 'in' && (
        <>
          <Choice
            label="Finest fraction"
            value={`${units.nearest}`}
            options={fractions}
            onInput={(nearest) => change('units', { nearest: Number(nearest) })}
          />
          <p class="soft small">Less stands in 1/64, then in thousandths, as a gauge reads it.</p>
        </>
      )}

      <h2>Machines</h2>
      <Owned machine="jointer" label="Jointer">
        <Width machine="jointer" label="Widest board it flattens" />
      </Owned>
      <Owned machine="planer" label="Planer">
        <Width machine="planer" label="Widest board it takes" />
        <Tick
          label="With a flattening sled"
          checked={machines.planer.sled}
          onInput={(sled) => changeMachine('planer', { sled })}
        />
      </Owned>
      <Saw machine="tableSaw" label="Table saw" />
      <Saw machine="guidedSaw" label="Guided circular saw" />
      <Saw machine="mitreSaw" label="Mitre saw">
        <Width machine="mitreSaw" label="Widest board it crosscuts" />
      </Saw>
      <Owned machine="router" label="Router" />
      <Owned machine="handPlanes" label="Hand planes">
        <Tick
          label="They flatten what is too wide for the jointer"
          checked={machines.handPlanes.wide ?? false}
          onInput={(wide) => changeMachine('handPlanes', { wide })}
        />
      </Owned>

      <h2>What comes off</h2>
      <div class="fields">
        {allowances.map(([name, label, most]) => (
          <SettledLength
            label={label}
            value={shop.value.allowances[name]}
            limits={{ least: 0, most }}
            onAccept={(value) => change('allowances', { [name]: value })}
          />
        ))}
      </div>

      <h2>Strips for panels</h2>
      <div class="fields">
        <SettledLength
          label="Narrowest"
          value={strips.min}
          limits={{ least: 10, most: strips.max }}
          onAccept={(min) => change('strips', { min })}
        />
        <SettledLength
          label="Widest"
          value={strips.max}
          limits={{ least: strips.min, most: 600 }}
          onAccept={(max) => change('strips', { max })}
        />
      </div>

      <ClampList />

      <a class="button" href="#/wood">
        Woods of your own
      </a>

      <h2>Measuring</h2>
      <SettledLength
        label="How closely your tape reads"
        value={tapePrecision}
        limits={{ least: 0.05, most: 5 }}
        onAccept={(precision) => editShop((now) => ({ ...now, tapePrecision: precision }))}
      />

      <h2>This phone</h2>
      <Choice
        label="Light"
        value={theme ?? 'auto'}
        options={lights}
        onInput={(next) => editShop((now) => withOptional(now, 'theme', next === 'auto' ? undefined : next))}
      />
      <Choice
        label="Thumb"
        value={hand ?? 'right'}
        options={thumbs}
        onInput={(next) => editShop((now) => ({ ...now, hand: next }))}
      />
    </Screen>
  );
}
