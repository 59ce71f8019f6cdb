import { CheapestCover } from './cheapest-cover.ts';
import { coverPanel } from './cover-panel.ts';
import type { Draft } from './draft.ts';
import { seededRandom } from './random.ts';
import { Waiting } from './waiting.ts';

/** For panels that are short, cuts what strips there are: the less is left to buy. Drafts with nothing short stay as they are. */
export function takeWhatThereIs(draft: Draft): Draft {
  const { units } = draft.rack;
  const short = units.flatMap(({ part }, at) => (part.panel && (draft.missing[at] as number) > 0 ? [at] : []));
  if (short.length === 0) return draft;
  const taken = draft.copy();
  const waiting = new Waiting(draft.rack, []);
  const mood = {
    random: seededRandom(1),
    waiting,
    credit: 0,
    blur: 0,
    lengthen: false,
    weights: { strip: 0, board: 0, longLeftovers: 0, plain: 0 },
  };
  for (const at of short) coverPanel(taken, at, mood, new CheapestCover(), true);
  return taken;
}
