import { type Phrase, phrase } from '../answer/phrase.ts';
import { mm } from '../answer/quantity.ts';
import type { JointSide } from './joint-side.ts';
import type { JointAdvice } from './joint-verdict.ts';

interface Parts {
  readonly first: JointSide;
  readonly second: JointSide;
  readonly length: number;
}

interface Numbers {
  readonly worst: number;
  readonly limit: number;
  readonly stretch: number | undefined;
}

/** Why a joint gets the advice that it gets, in the maker's words. */
export function jointReason(advice: JointAdvice, parts: Parts, { worst, limit, stretch }: Numbers): Phrase {
  const { first, second } = parts;
  const crossing = first.grain !== second.grain;
  const quantities = {
    worst: mm(worst),
    limit: mm(limit),
    length: mm(parts.length),
    ...(stretch !== undefined && { stretch: mm(stretch) }),
  };
  return phrase(`${reasons[advice](first, second, crossing, worst > limit)}`, quantities);
}

type Reason = (first: JointSide, second: JointSide, crossing: boolean, moves: boolean) => string;

const reasons: Readonly<Record<JointAdvice, Reason>> = {
  glue: (first, second, crossing) => {
    if (first.surface === 'mitre' && first.grain === 'across')
      return 'The grain runs on around the mitre: both move alike, {worst} apart at most. Glue it; mitred ends are weak, so add a spline or loose tenons.';
    if (crossing)
      return 'The grain crosses, but over this contact they move only {worst} apart, within {limit}. Glue it.';
    return `Long grain to long grain, running the same way: ${first.name} and ${second.name} move together, {worst} apart at most. Glue it.`;
  },
  'glue-stretch': (first, second) =>
    `The grain of ${first.name} and ${second.name} crosses: over {length} they would move {worst} apart, above {limit}. Glue one stretch of at most {stretch} and let the rest float.`,
  float: (first, second, crossing) =>
    crossing
      ? `The grain of ${first.name} and ${second.name} crosses: over {length} they would move {worst} apart, above {limit}. Fix one point and let the rest float.`
      : `${first.name} and ${second.name} run the same way but don't move alike: {worst} apart, above {limit}. Fix one point and let the rest float.`,
  align: (first, second, crossing) => {
    if (!crossing)
      return "The grain runs on, but the parts don't move alike: {worst} apart, above {limit}. Align it, don't glue it.";
    const runsOn = first.grain === 'across' ? first : second;
    const crosses = runsOn === first ? second : first;
    return `The grain of ${runsOn.name} runs on around the corner, that of ${crosses.name} crosses: they would move {worst} apart, and end grain meets long grain. Align it, don't glue it.`;
  },
  mechanical: (first, second, _crossing, moves) => {
    const both = first.surface === 'end' && second.surface === 'end';
    const grain = both ? 'End grain to end grain' : 'End grain to long grain';
    return moves
      ? `${grain}: glue alone doesn't hold. Use a mechanical joint, and let it move: the parts go {worst} apart, above {limit}.`
      : `${grain}: glue alone doesn't hold. Use a mechanical joint: tenon, dovetails, dowels or screws. Movement, {worst}, is within {limit}.`;
  },
};
