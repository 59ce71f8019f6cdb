import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

/** Unfolds on a tap. What it holds is drawn once it is opened: most are never, and each key typed would draw them all. */
export function Fold({ label, children }: { label: ComponentChildren; children: ComponentChildren }) {
  const [opened, setOpened] = useState(false);
  return (
    <details class="working" onToggle={() => setOpened(true)}>
      <summary>{label}</summary>
      {opened && children}
    </details>
  );
}
