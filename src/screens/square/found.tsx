import { degrees, mm } from '../../core/answer/quantity.ts';
import type { Worked } from '../../core/answer/worked.ts';
import { cornerNames } from '../../core/square/readings.ts';
import type { Squareness } from '../../core/square/squareness.ts';
import { type Fact, Facts } from '../../ui/facts.tsx';
import { Length } from '../../ui/length.tsx';
import { Say } from '../../ui/say.tsx';
import { ShowWorking } from '../../ui/show-working.tsx';
import type { Correction } from './correction-of.ts';

const shapes: Readonly<Record<Squareness['shape'], string>> = {
  square: 'Square',
  racked: 'Racked: sides equal, corners off',
  tapered: 'Tapered: equal diagonals prove nothing',
  irregular: 'Irregular',
  undetermined: 'Not known yet',
};

/** What the answer rests on: the shape that the readings make, and how far they can be trusted. */
export function Found({ of: { value, working }, correction }: { of: Worked<Squareness>; correction: Correction }) {
  const { shape, corners, closing, detectable } = value;
  const rows: Fact[] = cornerNames.flatMap((name) => {
    const angle = corners[name];
    return angle === null ? [] : [[`Corner ${name}`, degrees(angle)] as const];
  });
  if (closing.spare > 0) rows.push(['Readings disagree by', mm(closing.closing)]);
  if (detectable !== null) rows.push(['Least lean shown', mm(detectable)]);
  return (
    <section class="card" aria-label="What the readings say">
      <h2>{shapes[shape]}</h2>
      <Facts rows={rows} />
      <ShowWorking of={working} />
      {correction.kind === 'squeeze' && <ShowWorking of={correction.clamps.working} label="How far to squeeze" />}
      {correction.kind === 'cuts' &&
        correction.cuts.map(({ value: { hand, lost, sayShared }, working }) => (
          <>
            <h3>The {hand}-hand cut</h3>
            {sayShared && (
              <p>
                <Say phrase={sayShared} />
              </p>
            )}
            {lost > 0 && (
              <p>
                Moving one end takes <Length mm={lost} /> off the longer edge.
              </p>
            )}
            <ShowWorking of={working} />
          </>
        ))}
    </section>
  );
}
