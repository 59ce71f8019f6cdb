import { type Phrase, phrase, sentences } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import { cornersToMove } from './corners-to-move.ts';
import { sayMove } from './correction-cut.ts';
import type { Measured } from './measured.ts';
import { lineNames, type ReadingName, spokenReadings } from './readings.ts';
import type { Squareness } from './squareness.ts';

function missing(measured: Measured): ReadingName | undefined {
  return measured.farEnd ? undefined : lineNames.find((name) => measured.readings[name] === undefined);
}

function sayMoves(found: Omit<Squareness, 'say'>): Phrase {
  const { C, D } = found.fitted;
  const moves = cornersToMove(found);
  if (moves.length === 0)
    return phrase`Both ends are square, but the back edge runs off: ${mm(Math.abs(C.y - D.y))} further back at ${C.y > D.y ? 'C than at D' : 'D than at C'}.`;
  return sentences(moves.map((corner) => phrase`Move ${sayMove(corner, found.slide[corner] ?? 0)}.`));
}

/** What the maker is told first: measure again, leave it, or what to move, which way and how far. */
export function saySquareness(found: Omit<Squareness, 'say'>, measured: Measured): Phrase {
  if (found.suspect) return phrase`The ${spokenReadings[found.suspect]} doesn’t fit the others. Measure it again.`;
  if (!found.closing.consistent)
    return measured.farEnd
      ? phrase`The ends are not as you said. Measure all four sides and both diagonals.`
      : phrase`The readings disagree by ${mm(found.closing.closing)}. Measure all again.`;
  const lacking = missing(measured);
  if (found.shape === 'undetermined')
    return phrase`These readings can’t tell. ${lacking ? `Measure the ${spokenReadings[lacking]} too.` : 'Measure again.'}`;
  if (found.shape === 'square')
    return phrase`As square as you can measure: a lean under ${mm(found.detectable ?? 0)} does not show.`;
  return sayMoves(found);
}
