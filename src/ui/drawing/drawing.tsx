import type { ComponentChildren } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { Button } from '../button.tsx';
import { saveFile } from '../save-file.ts';
import { drawingFile } from './drawing-file.ts';

interface Props {
  /** With what it is of, it can be saved as a file. */
  name?: string;
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

/** A drawing in pixels of its own, scaled to the width of the screen, with the hatches defined; one with a name can be saved. */
export function Drawing({ name, width, height, alternative, children }: Props) {
  const id = useId();
  const drawn = useRef<SVGSVGElement>(null);
  const hatch: Hatch = {
    longGrain: `url(#${id}-long)`,
    endGrain: `url(#${id}-end)`,
    waste: `url(#${id}-waste)`,
  };
  return (
    <>
      <svg ref={drawn} class="drawing" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={alternative}>
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
      {name && (
        <Button
          look="plain"
          onClick={() => drawn.current && saveFile(`${name}.svg`, 'image/svg+xml', drawingFile(drawn.current, name))}
        >
          Save the drawing<span class="hidden-visually"> of {name}</span>
        </Button>
      )}
    </>
  );
}
