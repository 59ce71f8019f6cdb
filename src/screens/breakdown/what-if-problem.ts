import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';

export type WhatIf = 'jointer' | 'thickness' | 'width';

/** A problem with one figure otherwise, mm: the jointer's width, or the thickness or width of a part. */
export function whatIfProblem(asked: BreakdownProblem, what: WhatIf, part: string, value: number): BreakdownProblem {
  if (what === 'jointer') {
    const { flattenBy: _, ...shop } = asked.shop;
    return { ...asked, shop: { ...shop, jointerWidth: value } };
  }
  return { ...asked, parts: asked.parts.map((one) => (one.id === part ? { ...one, [what]: value } : one)) };
}

/** What is changed, as it is now, mm. */
export function presentValue(asked: BreakdownProblem, what: WhatIf, part: string): number | undefined {
  return what === 'jointer' ? asked.shop.jointerWidth : asked.parts.find(({ id }) => id === part)?.[what];
}
