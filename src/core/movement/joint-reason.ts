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
  return phrase(reasons[advice](first, second, crossing, worst > limit), quantities);
}

type Reason = (first: JointSide, second: JointSide, crossing: boolean, moves: boolean) => string;

const apart = (crossing: boolean): string =>
  `${crossing ? 'The grain crosses: over {length} they would move' : "They run the same way but don't move alike:"} {worst} apart, above {limit}.`;

/** What to do stands above as the verdict: here only what that leaves open. */
const reasons: Readonly<Record<JointAdvice, Reason>> = {
  glue: (first, _second, crossing) => {
    if (first.surface === 'mitre' && first.grain === 'across')
      return 'The grain runs on around the mitre, so they move alike, within {worst}. Mitred ends are weak: add a spline or loose tenons.';
    return crossing
      ? 'The grain crosses, but they move only {worst} apart, within {limit}.'
      : 'Long grain to long grain: they move alike, within {worst}.';
  },
  'glue-stretch': (_first, _second, crossing) =>
    `${apart(crossing)} Glue one stretch of at most {stretch} and let the rest float.`,
  float: (_first, _second, crossing) => `${apart(crossing)} Fix one point and let the rest float.`,
  align: (first, second, crossing) => {
    if (!crossing) return apart(crossing);
    const [runsOn, crosses] = first.grain === 'across' ? [first, second] : [second, first];
    return `The grain of ${runsOn.name} runs on around the corner, that of ${crosses.name} crosses: they would move {worst} apart, and end grain meets long grain.`;
  },
  mechanical: (first, second, _crossing, moves) =>
    `End grain to ${first.surface === 'end' && second.surface === 'end' ? 'end' : 'long'} grain: glue alone doesn't hold. Use a mechanical joint${
      moves
        ? ', and let it move: {worst} apart, above {limit}.'
        : ': tenon, dovetails, dowels or screws. They move {worst} apart, within {limit}.'
    }`,
};
