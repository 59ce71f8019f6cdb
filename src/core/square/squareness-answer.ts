import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import { sayMove } from './correction-cut.ts';
import type { Measured } from './measured.ts';
import { lineNames, type ReadingName, spokenReadings } from './readings.ts';
import type { Squareness } from './squareness.ts';

function missing(measured: Measured): ReadingName | undefined {
  return measured.farEnd ? undefined : lineNames.find((name) => measured.readings[name] === undefined);
}

function sayMoves({ slide, detectable, fitted: { C, D } }: Omit<Squareness, 'say'>): Phrase {
  const moves = [
    { by: slide.C ?? 0, name: 'c', corner: 'C', other: 'D' },
    { by: slide.D ?? 0, name: 'd', corner: 'D', other: 'C' },
  ] as const;
  const largest = Math.max(...moves.map(({ by }) => Math.abs(by)));
  const higher = Math.abs(C.y - D.y);
  if (largest <= (detectable ?? 0) && higher > largest)
    return phrase(
      `Both ends are square, but the back edge runs off: {by} further back at ${C.y > D.y ? 'C than at D' : 'D than at C'}.`,
      { by: mm(higher) },
    );
  const seen = moves.filter(({ by }) => Math.abs(by) > Math.min(detectable ?? 0, largest / 2));
  const text = seen.map(({ by, name, ...line }) => `Move ${sayMove({ ...line, towards: by <= 0 }, name)}.`);
  return phrase(text.join(' '), Object.fromEntries(seen.map(({ by, name }) => [name, mm(Math.abs(by))])));
}

/** What the maker is told first: measure again, leave it, or what to move, which way and how far. */
export function saySquareness(found: Omit<Squareness, 'say'>, measured: Measured): Phrase {
  if (found.suspect) return phrase(`The ${spokenReadings[found.suspect]} doesn't fit the others. Measure it again.`);
  if (!found.closing.consistent)
    return measured.farEnd
      ? phrase('The ends are not as you said. Measure all four sides and both diagonals.')
      : phrase('The readings disagree by {closing}. Measure all again.', { closing: mm(found.closing.closing) });
  const lacking = missing(measured);
  if (found.shape === 'undetermined')
    return phrase(
      `These readings can't tell. ${lacking ? `Measure the ${spokenReadings[lacking]} too.` : 'Measure again.'}`,
    );
  if (found.shape === 'square')
    return phrase('As square as you can measure: a lean under {detectable} does not show.', {
      detectable: mm(found.detectable ?? 0),
    });
  return sayMoves(found);
}
