import type { Working } from './worked.ts';

/**
 * A working that goes on from another: all steps in order and the sources of both; it holds where the later one says.
 *
 * @param before what comes first
 * @param after what goes on from it
 * @returns both as one
 * @example joined({ steps: [], sources: ['geometry', 'label'] }, { steps: [], sources: ['label'] })
 *   // => { steps: [], sources: ['geometry', 'label'] }
 */
export const joined = (before: Working, after: Working): Working => ({
  ...before,
  ...after,
  steps: [...before.steps, ...after.steps],
  sources: [...new Set([...before.sources, ...after.sources])],
});
