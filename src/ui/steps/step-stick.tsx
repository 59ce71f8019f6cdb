import { isSettled, type Ticks } from '../../core/steps/progress.ts';
import type { FlowStep } from './flow-step.ts';

/** The whole sequence as marks on a story stick: ticked, here, still to come. */
export function StepStick({ steps, at, ticks }: { steps: readonly FlowStep[]; at: number; ticks: Ticks }) {
  const width = 328;
  const gap = width / steps.length;
  return (
    <svg class="drawing step-stick" viewBox={`0 0 ${width} 22`} aria-hidden="true">
      <path d={`M0 11H${width}`} class="thin" />
      {steps.map((step, index) => {
        const x = gap * (index + 0.5);
        const done = isSettled(ticks, step);
        const half = index === at ? 10 : done ? 6 : 3;
        return (
          <path
            d={`M${x} ${11 - half}V${11 + half}`}
            class={index === at ? 'here' : done ? 'outline' : 'thin'}
            stroke-width={index === at ? 4 : 2}
          />
        );
      })}
    </svg>
  );
}
