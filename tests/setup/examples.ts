/** A number as it is printed: any other within half of its last digit is the same. */
class Printed {
  constructor(private readonly digits: string) {}

  asymmetricMatch(got: unknown): boolean {
    const half = 10 ** -(this.digits.split('.')[1] ?? '').length / 2;
    // The hair is for a figure that lies on the edge but for the rounding of doubles.
    return typeof got === 'number' && Math.abs(got - Number(this.digits)) <= half * (1 + 1e-9);
  }

  toString(): string {
    return `Printed<${this.digits}>`;
  }
}

/** Strings are left alone, and a decimal fraction becomes a `Printed`. */
const literals = /'(?:\\.|[^'\\])*'|`(?:\\.|[^`\\])*`|-?\b\d+\.\d+\b/g;

/**
 * Runs an example, `surfaceMeasure(board) // => { value: 4 }`, with these names in scope: what its code gives, and what
 * stands after the arrow. Numbers with decimals hold to half of their last digit, all else exactly.
 */
export function runExample(
  example: string,
  scope: Readonly<Record<string, unknown>>,
): { got: unknown; stated: unknown } {
  const [code = '', stated = ''] = example.split(/\s*\/\/ =>\s*/);
  const run = (source: string): unknown =>
    new Function(...Object.keys(scope), 'Printed', `'use strict'; return (${source}\n);`)(
      ...Object.values(scope),
      Printed,
    );
  return {
    got: run(code),
    stated: run(stated.replace(literals, (one) => (/^[-\d]/.test(one) ? `new Printed('${one}')` : one))),
  };
}
