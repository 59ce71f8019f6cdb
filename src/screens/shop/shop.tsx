import { shop } from '../../app/shop.ts';
import { badNumber, type Limits } from '../../core/answer/bad-number.ts';
import type { Shop } from '../../store/records/shop.ts';
import { editShop } from '../../store/shop.ts';
import { Choice, Tick } from '../../ui/fields.tsx';
import { Screen } from '../../ui/screen.tsx';
import { SettledLength, SettledNumber } from '../../ui/settled.tsx';
import { questions } from '../questions.ts';
import { ClampList } from './clamp-list.tsx';

type Machines = Shop['machines'];

const within = (name: string, limits: Limits) => (value: number) => badNumber('', name, value, 'mm', limits);
const machineWidth = within('The width', { least: 50, most: 1500 });
const kerf = within('The kerf', { least: 0, most: 12 });

function changeMachine<M extends keyof Machines>(machine: M, part: Partial<Machines[M]>): void {
  editShop((now) => ({
    ...now,
    machines: { ...now.machines, [machine]: { ...now.machines[machine], ...part } },
  }));
}

/** The shop's machines and their limits: what every plan and every step keeps to. */
export default function ShopScreen() {
  const { machines, units, allowances, strips, tapePrecision, theme, hand } = shop.value;
  const saw = (machine: 'tableSaw' | 'guidedSaw' | 'mitreSaw', name: string) => (
    <div class="card">
      <Tick label={name} checked={machines[machine].owned} onInput={(owned) => changeMachine(machine, { owned })} />
      {machines[machine].owned && (
        <SettledLength
          label="Kerf"
          value={machines[machine].kerf}
          check={kerf}
          onAccept={(value) => changeMachine(machine, { kerf: value })}
        />
      )}
    </div>
  );
  return (
    <Screen question={questions.shop} kicker="Shop">
      <p class="soft">Kept as you type. Plans and milling steps stay within these limits.</p>
      <Choice
        label="Units"
        value={units.unit}
        options={[
          { value: 'in', label: 'Inches' },
          { value: 'mm', label: 'Millimetres' },
        ]}
        onInput={(unit) => editShop((now) => ({ ...now, units: { ...now.units, unit } }))}
      />
      {units.unit === 'in' && (
        <Choice
          label="Finest fraction"
          value={String(units.nearest)}
          options={['8', '16', '32', '64'].map((value) => ({ value, label: `1/${value}` }))}
          onInput={(nearest) => editShop((now) => ({ ...now, units: { ...now.units, nearest: Number(nearest) } }))}
        />
      )}

      <h2>Machines</h2>
      <div class="card">
        <Tick
          label="Jointer"
          checked={machines.jointer.owned}
          onInput={(owned) => changeMachine('jointer', { owned })}
        />
        {machines.jointer.owned && (
          <SettledLength
            label="Widest board it flattens"
            value={machines.jointer.width}
            check={machineWidth}
            onAccept={(width) => changeMachine('jointer', { width })}
          />
        )}
      </div>
      <div class="card">
        <Tick label="Planer" checked={machines.planer.owned} onInput={(owned) => changeMachine('planer', { owned })} />
        {machines.planer.owned && (
          <>
            <SettledLength
              label="Widest board it takes"
              value={machines.planer.width}
              check={machineWidth}
              onAccept={(width) => changeMachine('planer', { width })}
            />
            <Tick
              label="With a flattening sled"
              checked={machines.planer.sled}
              onInput={(sled) => changeMachine('planer', { sled })}
            />
          </>
        )}
      </div>
      {saw('tableSaw', 'Table saw')}
      {saw('guidedSaw', 'Guided circular saw')}
      {saw('mitreSaw', 'Mitre saw')}
      <div class="card">
        <Tick label="Router" checked={machines.router.owned} onInput={(owned) => changeMachine('router', { owned })} />
        <Tick
          label="Hand planes"
          checked={machines.handPlanes.owned}
          onInput={(owned) => changeMachine('handPlanes', { owned })}
        />
      </div>

      <h2>What comes off</h2>
      <div class="fields">
        <SettledLength
          label="Jointing both edges of a strip"
          value={allowances.edge}
          check={within('This allowance', { least: 0, most: 25 })}
          onAccept={(edge) => editShop((now) => ({ ...now, allowances: { ...now.allowances, edge } }))}
        />
        <SettledLength
          label="Extra length on every part"
          value={allowances.length}
          check={within('This allowance', { least: 0, most: 300 })}
          onAccept={(length) => editShop((now) => ({ ...now, allowances: { ...now.allowances, length } }))}
        />
        <SettledLength
          label="Cleaning one face"
          value={allowances.face}
          check={within('This allowance', { least: 0, most: 10 })}
          onAccept={(face) => editShop((now) => ({ ...now, allowances: { ...now.allowances, face } }))}
        />
      </div>

      <h2>Strips for panels</h2>
      <div class="fields">
        <SettledLength
          label="Narrowest"
          value={strips.min}
          check={within('The narrowest strip', { least: 10, most: strips.max })}
          onAccept={(min) => editShop((now) => ({ ...now, strips: { ...now.strips, min } }))}
        />
        <SettledLength
          label="Widest"
          value={strips.max}
          check={within('The widest strip', { least: strips.min, most: 600 })}
          onAccept={(max) => editShop((now) => ({ ...now, strips: { ...now.strips, max } }))}
        />
      </div>

      <ClampList clamps={shop.value.clamps} onChange={(clamps) => editShop((now) => ({ ...now, clamps }))} />

      <a class="button" href="#/wood">
        Woods of your own
      </a>

      <h2>Measuring</h2>
      <SettledNumber
        label="How closely your tape reads"
        hint="mm"
        value={tapePrecision}
        check={within('The precision', { least: 0.05, most: 5 })}
        onAccept={(precision) => editShop((now) => ({ ...now, tapePrecision: precision }))}
      />

      <h2>This phone</h2>
      <Choice
        label="Light"
        value={theme ?? 'auto'}
        options={[
          { value: 'auto', label: 'As the phone' },
          { value: 'light', label: 'Day' },
          { value: 'dark', label: 'Evening' },
          { value: 'contrast', label: 'More contrast' },
        ]}
        onInput={(next) => editShop(({ theme: _, ...now }) => (next === 'auto' ? now : { ...now, theme: next }))}
      />
      <Choice
        label="Thumb"
        value={hand ?? 'right'}
        options={[
          { value: 'left', label: 'Left' },
          { value: 'right', label: 'Right' },
        ]}
        onInput={(next) => editShop((now) => ({ ...now, hand: next }))}
      />
    </Screen>
  );
}
