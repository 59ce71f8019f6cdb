import type { ComponentChildren } from 'preact';

/** A part of a screen under its heading. */
export const Card = ({ title, children }: { title: string; children: ComponentChildren }) => (
  <section class="card" aria-label={title}>
    <h2>{title}</h2>
    {children}
  </section>
);
