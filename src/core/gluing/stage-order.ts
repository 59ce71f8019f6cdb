import { type Outcome, problem } from '../answer/problem.ts';

/** What the order looks at: a stage waits for those it needs. */
export interface Needing {
  readonly id: string;
  readonly name: string;
  readonly needs: readonly string[];
}

/**
 * Stages in an order in which none comes before what it needs; otherwise as given.
 *
 * @param stages each with its id, its name and the ids of those that must be done before it
 * @returns the same stages, reordered
 * @valid any number of pieces in one list, ids unique
 * @errors two stages with one id; a stage that needs one that isn't there; stages that wait for each other, named
 * @example stageOrder([
 *   { id: 'case', name: 'Case', needs: ['panel'] },
 *   { id: 'panel', name: 'Panel', needs: [] },
 * ]).map(({ id }) => id) // => ['panel', 'case']
 * @source topological sorting, Kahn 1962
 */
export function stageOrder<T extends Needing>(stages: readonly T[]): Outcome<readonly T[]> {
  const byId = new Map(stages.map((stage) => [stage.id, stage]));
  for (const [index, { id, name, needs }] of stages.entries()) {
    if (byId.get(id) !== stages[index]) return problem(`stages.${index}.id`, `Two stages have the id of ${name}.`);
    if (needs.some((needed) => !byId.has(needed)))
      return problem(`stages.${index}.needs`, `${name} waits for a stage that isn't there. Add it, or don't wait.`);
  }
  const order: T[] = [];
  const done = new Set<string>();
  let waiting = [...stages];
  while (waiting.length > 0) {
    const next = waiting.find(({ needs }) => needs.every((needed) => done.has(needed)));
    if (!next) return waitingForEachOther(waiting, done);
    order.push(next);
    done.add(next.id);
    waiting = waiting.filter((stage) => stage !== next);
  }
  return order;
}

/** Follows the waits from stage to stage until one comes up again, so that only the ring itself is named. */
function waitingForEachOther(waiting: readonly Needing[], done: ReadonlySet<string>) {
  const trail: Needing[] = [];
  let at = waiting[0];
  while (at && !trail.includes(at)) {
    trail.push(at);
    const blocked: string | undefined = at.needs.find((needed) => !done.has(needed));
    at = waiting.find(({ id }) => id === blocked);
  }
  const ring = at ? trail.slice(trail.indexOf(at)) : trail;
  const names = ring.map(({ name }) => name).join(', ');
  return problem('stages', `These wait for each other: ${names}. Take out one of the waits.`);
}
