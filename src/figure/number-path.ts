/**
 * Where the first number lies that answers to `wrong`. Without recursion, since input from outside may be nested
 * deeper than the stack.
 *
 * Example: `numberPath({ boards: [{ width: -1 }] }, (n) => n < 0)` is `boards.0.width`.
 */
export function numberPath(within: object, wrong: (value: number) => boolean): string | undefined {
  const waiting: (readonly [path: string, value: unknown])[] = [['', within]];
  for (const [path, value] of waiting) {
    if (typeof value === 'number' && wrong(value)) return path;
    if (typeof value !== 'object' || value === null) continue;
    for (const [key, inner] of Object.entries(value)) waiting.push([path === '' ? key : `${path}.${key}`, inner]);
  }
  return undefined;
}
