const turns = new Map<string, Promise<unknown>>();

/** Runs the work once what was asked before under the same name has ended, well or badly. */
export function inTurn<T>(name: string, work: () => Promise<T>): Promise<T> {
  const turn = (turns.get(name) ?? Promise.resolve()).then(work, work);
  turns.set(name, turn);
  const leave = () => {
    if (turns.get(name) === turn) turns.delete(name);
  };
  turn.then(leave, leave);
  return turn;
}
