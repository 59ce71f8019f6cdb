import { oneStep } from '../../core/answer/one-step.ts';
import { phrase } from '../../core/answer/phrase.ts';
import { mm } from '../../core/answer/quantity.ts';
import type { Working } from '../../core/answer/worked.ts';
import type { PanelLayout } from '../../core/breakdown/panel-layout.ts';

/** How a panel's width comes out of its strips. */
export function panelWidthWorking({ strips, width }: PanelLayout, edgeAllowance: number): Working {
  const rough = strips.reduce((sum, strip) => sum + strip.width, 0);
  const by = phrase`strips ${mm(rough)} − ${strips.length} × edges ${mm(edgeAllowance)}`;
  return oneStep('width of the panel', by, mm(width), ['geometry']).working;
}
