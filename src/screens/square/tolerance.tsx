import { shop } from '../../app/shop.ts';
import { isProblem } from '../../core/answer/problem.ts';
import { lengthsOf } from '../../core/square/quadrilateral.ts';
import type { Squareness } from '../../core/square/squareness.ts';
import { tolerance } from '../../core/square/tolerance.ts';
import { editShop } from '../../store/shop.ts';
import { squarenessTolerances } from '../../tables/squareness-tolerances.ts';
import { Pick } from '../../ui/fields.tsx';
import { Length } from '../../ui/length.tsx';
import { SettledNumber } from '../../ui/settled.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import { units } from '../../ui/units.ts';
import { allowedFor } from './habits.ts';

const words = {
  within: 'Near enough for this use.',
  close: 'Near enough as read: more may hide.',
  outside: 'Too far out for this use.',
  unseen: 'These readings are too coarse to say.',
};

interface Props {
  of: Squareness | undefined;
  use: string;
  /** Known error of the square that was used, mm for each metre; 0 for a tape. */
  toolPerMetre: number;
  onUse(use: string): void;
}

/** Whether the worse end is near enough to square for what it is for, and how near that has to be. */
export function Tolerance({ of, use, toolPerMetre, onUse }: Props) {
  const perMetre = allowedFor(use, shop.value.square);
  return (
    <section class="card" aria-label="Near enough">
      {of && <Verdict of={of} perMetre={perMetre} toolPerMetre={toolPerMetre} />}
      <Pick
        label="What it is for"
        value={use}
        options={squarenessTolerances.map(({ id: value, label }) => ({ value, label }))}
        onInput={onUse}
      />
      <SettledNumber
        key={use}
        label="An end may be out by"
        // The same number either way: a slope by the thousand.
        hint={units.value.unit === 'in' ? 'thousandths of an inch per inch' : 'mm per metre'}
        value={perMetre}
        check={(value) => tolerance(0, 1000, value, 0)}
        onAccept={(value) =>
          editShop(({ square, ...now }) => ({
            ...now,
            square: { ...square, allowed: { ...square?.allowed, [use]: value } },
          }))
        }
      />
    </section>
  );
}

function Verdict({ of, perMetre, toolPerMetre }: { of: Squareness; perMetre: number; toolPerMetre: number }) {
  if (of.shape === 'undetermined' || !of.closing.consistent) return null;
  const { right, left } = lengthsOf(of.fitted);
  const [slide, end] =
    Math.abs(of.slide.C ?? 0) >= Math.abs(of.slide.D ?? 0) ? [of.slide.C ?? 0, right] : [of.slide.D ?? 0, left];
  const result = tolerance(slide, end, perMetre, of.detectable ?? Number.POSITIVE_INFINITY, toolPerMetre);
  if (isProblem(result)) return null;
  return (
    <div aria-live="polite">
      <p>
        <b>{words[result.value.verdict]}</b> Allowed: <Length mm={result.value.allowed} /> over <Length mm={end} />.
      </p>
      <ShowWorking of={result.working} />
    </div>
  );
}
