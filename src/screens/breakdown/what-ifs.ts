import type { BreakdownProblem } from '../../core/breakdown/problem-types.ts';
import type { Names } from './names.ts';

/** One figure of a problem that could be otherwise, mm. */
export interface WhatIf {
  /** What a choice of it is kept by. */
  readonly value: string;
  readonly label: string;
  readonly now: number;
  asked(mm: number): BreakdownProblem;
}

/** The figures of a problem that could be otherwise: the jointer's width, the thickness and the width of each part. */
export function whatIfs(asked: BreakdownProblem, names: Names): [WhatIf, ...WhatIf[]] {
  const { flattenBy: _, ...shop } = asked.shop;
  return [
    {
      value: 'jointer',
      label: 'Width of the jointer',
      now: shop.jointerWidth,
      asked: (jointerWidth) => ({ ...asked, shop: { ...shop, jointerWidth } }),
    },
    ...asked.parts.flatMap((part) =>
      (['thickness', 'width'] as const).map((size) => ({
        value: `${size} ${part.id}`,
        label: `${size === 'width' ? 'Width' : 'Thickness'} of ${names.of(part.id)}`,
        now: part[size],
        asked: (mm: number) => ({
          ...asked,
          parts: asked.parts.map((one) => (one === part ? { ...one, [size]: mm } : one)),
        }),
      })),
    ),
  ];
}
