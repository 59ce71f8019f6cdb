import { badNumber } from '../../core/answer/bad-number.ts';
import type { MachineLimit } from '../../core/milling/machine-limits.ts';
import type { ManualLimit, Shop } from '../../store/records/shop.ts';
import { changeShop } from '../../store/shop.ts';
import { machineLimits } from '../../tables/machine-limits.ts';
import { Length } from '../../ui/length.tsx';
import { OptionalLength } from '../../ui/settled.tsx';
import { SourceMark } from '../../ui/source-mark.tsx';
import { limitedMachines } from './milling-input.ts';

type Limited = (typeof limitedMachines)[number];

const machineNames: Record<Limited, string> = {
  jointer: 'Jointer',
  planer: 'Planer',
  tableSaw: 'Table saw',
  guidedSaw: 'Guided saw',
  router: 'Router',
};

const figures: readonly { own: keyof ManualLimit; usual: keyof MachineLimit; name: string; most: number }[] = [
  { own: 'length', usual: 'leastLength', name: 'Least length', most: 2000 },
  { own: 'width', usual: 'leastWidth', name: 'Least width', most: 500 },
  { own: 'thickness', usual: 'leastThickness', name: 'Least thickness', most: 100 },
  { own: 'depth', usual: 'depthPerPass', name: 'Most in one pass', most: 200 },
];

const isSaw = (machine: Limited) => machine === 'tableSaw' || machine === 'guidedSaw';

/** The smallest piece and deepest pass of each machine owned: the usual figure, unless the manual's is typed in. */
export function ManualLimits({ shop }: { shop: Shop }) {
  const owned = limitedMachines.filter((machine) => shop.machines[machine].owned);
  const keep = (machine: Limited, figure: keyof ManualLimit, value: number | undefined) => {
    void changeShop((now) => {
      const { [figure]: _, ...others } = now.manualLimits?.[machine] ?? {};
      const own = value === undefined ? others : { ...others, [figure]: value };
      return { ...now, manualLimits: { ...now.manualLimits, [machine]: own } };
      // A write that fails is kept and shown by the shell.
    }).catch(() => {});
  };
  if (owned.length === 0) return null;
  return (
    <details class="working">
      <summary>Limits of your machines</summary>
      <p class="soft">Leave empty to work with the usual figure. What the manual says wins.</p>
      {owned.map((machine) => (
        <section class="card" aria-label={machineNames[machine]} key={machine}>
          <h2>{machineNames[machine]}</h2>
          <div class="fields">
            {figures.map(({ own, usual, name, most }) => {
              const { mm, source } = machineLimits[machine][usual];
              return (
                <div key={own}>
                  <OptionalLength
                    label={own === 'depth' && isSaw(machine) ? 'Deepest cut' : name}
                    value={shop.manualLimits?.[machine]?.[own]}
                    check={(value) => badNumber('', name, value, 'mm', { least: 0.1, most })}
                    onAccept={(value) => keep(machine, own, value)}
                  />
                  <p class="soft small">
                    Usual: <Length mm={mm} /> <SourceMark of={source} />
                  </p>
                </div>
              );
            })}
          </div>
        </section>
      ))}
    </details>
  );
}
