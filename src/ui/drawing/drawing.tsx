import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface Props {
  width: number;
  height: number;
  /** What the drawing shows, in words, for those who can't see it. */
  alternative: string;
  children(hatch: Hatch): ComponentChildren;
}

/** Fills that tell wood apart without colour: `url(...)` values for this drawing. */
export interface Hatch {
  readonly longGrain: string;
  readonly endGrain: string;
  readonly waste: string;
}

/** A drawing in pixels of its own, scaled to the width of the screen, with the hatches defined. */
export function Drawing({ width, height, alternative, children }: Props) {
  const id = useId();
  const hatch: Hatch = {
    longGrain: `url(#${id}-long)`,
    endGrain: `url(#${id}-end)`,
    waste: `url(#${id}-waste)`,
  };
  return (
    <svg class="drawing" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={alternative}>
      <defs>
        <pattern id={`${id}-long`} width="46" height="9" patternUnits="userSpaceOnUse">
          <path d="M0 2.5h28M34 2.5h9M8 6.5h36" stroke="var(--line)" fill="none" />
        </pattern>
        <pattern id={`${id}-end`} width="14" height="7" patternUnits="userSpaceOnUse">
          <path d="M0 6q7-7 14 0" stroke="var(--edge)" fill="none" />
        </pattern>
        <pattern id={`${id}-waste`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0v7" stroke="var(--edge)" />
        </pattern>
      </defs>
      {children(hatch)}
    </svg>
  );
}
