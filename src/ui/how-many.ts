/** A count with what is counted: `1 board`, `2 boards`. */
export const howMany = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;
