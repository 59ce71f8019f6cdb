import type { BreakdownPlan, BreakdownProblem } from '../../../src/core/breakdown/problem-types.ts';

/**
 * The rules as the statement of the problem gives them, written apart from the core's own check and from the search:
 * plain boards, the jointer as the limit, nothing cut yet.
 */
export function independentCheck(asked: BreakdownProblem, plan: BreakdownPlan) {
  const { shop } = asked;
  const slack = 1e-6;
  const breaches: string[] = [];
  const got = new Map<string, { width: number; strips: number }>();
  let area = 0;
  for (const board of asked.boards) {
    let free = 0;
    for (const blank of plan.blanks.filter((b) => b.board === board.id).sort((a, b) => a.start - b.start)) {
      if (blank.start < free - slack || blank.start + blank.length > board.length + slack)
        breaches.push(`${board.id}: blank at ${blank.start}`);
      free = blank.start + blank.length + shop.crosscutKerf;
      area += (board.width * (blank.length + shop.crosscutKerf)) / 1e6;
      const ripped = blank.strips.reduce((sum, strip) => sum + strip.width + shop.ripKerf, -shop.ripKerf);
      if (ripped > board.width + slack) breaches.push(`${board.id}: ${ripped} ripped of ${board.width}`);
      for (const strip of blank.strips) {
        const part = asked.parts.find((p) => p.id === strip.part);
        if (!part || strip.unit < 1 || strip.unit > part.quantity || part.species !== board.species) {
          breaches.push(`${board.id}: strip for ${strip.part} ${strip.unit}`);
          continue;
        }
        const widest = part.panel ? Math.min(shop.maxStrip, shop.jointerWidth) : shop.jointerWidth;
        const least = part.panel ? shop.minStrip : part.width + shop.edgeAllowance;
        if (strip.width > widest + slack || strip.width < least - slack)
          breaches.push(`${part.id}: ${strip.width} wide`);
        if (blank.length < part.length + shop.lengthAllowance - slack)
          breaches.push(`${part.id}: ${blank.length} long`);
        const thick =
          board.thickness -
          board.cup * (strip.width / board.width) ** 2 -
          board.bow * (blank.length / board.length) ** 2 -
          2 * shop.faceAllowance;
        if (thick < part.thickness - slack) breaches.push(`${part.id}: ${thick} thick`);
        const key = `${part.id}#${strip.unit}`;
        const before = got.get(key) ?? { width: 0, strips: 0 };
        got.set(key, { width: before.width + strip.width - shop.edgeAllowance, strips: before.strips + 1 });
      }
    }
  }
  const short = plan.short.map((entry) => `${entry.part}#${entry.unit}`);
  for (const part of asked.parts)
    for (let unit = 1; unit <= part.quantity; unit++) {
      const { width, strips } = got.get(`${part.id}#${unit}`) ?? { width: 0, strips: 0 };
      const covered = part.panel ? width >= part.width - slack : strips === 1;
      if (covered === short.includes(`${part.id}#${unit}`)) breaches.push(`${part.id} ${unit}: covered ${covered}`);
    }
  return { breaches, area, short: short.length };
}
