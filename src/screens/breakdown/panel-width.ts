import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { mm } from '../../core/answer/quantity.ts';
import { sumOf } from '../../core/answer/sum-of.ts';
import type { Working } from '../../core/answer/worked.ts';
import type { PanelLayout } from '../../core/breakdown/panel-layout.ts';

/** How a panel's width comes out of its strips. */
export function panelWidthWorking({ strips, width }: PanelLayout, edgeAllowance: number): Working {
  const rough = sumOf(strips, (strip) => strip.width);
  const by = phrase`strips ${mm(rough)} − ${strips.length} × edges ${mm(edgeAllowance)}`;
  return oneStep('width of the panel', by, mm(width), ['geometry']).working;
}
