import { existsSync, mkdirSync, readFileSync, rmdirSync, writeFileSync } from 'node:fs';

/** One row of the page of checks against the outside. */
export interface OutsideRow {
  readonly what: string;
  readonly source: string;
  readonly expected: string;
  readonly got: string;
  readonly tolerance: string;
}

const page = 'tests/OUTSIDE-CHECKS.md';
const heading = '\n## ';

const preface = `# Checks against the outside

Every check of a result against something outside of this project, as the tests make it, and every figure in the tables
with its source. Tolerances are in the unit of the figure; the test says why each is what it is. A test fails where its
section is stale. To write it anew: \`UPDATE_CHECKS=1 npx vitest run PATH-OF-THE-TEST\`.
`;

const cell = (text: string): string => text.replaceAll('|', '\\|').replace(/\s+/g, ' ').trim();

/** A table of Markdown. */
export const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.map(cell).join(' | ')} |`).join('\n');

/** The sources first, then the tests by code units, so that every machine writes the same page, then the figures. */
const inOrder = (a: string, b: string): number => rank(a) - rank(b) || (a < b ? -1 : a > b ? 1 : 0);
const rank = (text: string): number => (text.startsWith('Sources') ? 0 : text.startsWith('tests/') ? 1 : 2);

/** The section of a test file: its rows in the order in which they were written, each once. */
export const writtenSection = (title: string, rows: readonly OutsideRow[]): string =>
  section(
    title,
    table(
      ['what', 'source', 'expected', 'got', 'tolerance'],
      [...new Map(rows.map((row) => [JSON.stringify(row), Object.values(row) as string[]])).values()],
    ),
  );

export const section = (title: string, text: string): string => `${title}\n\n${text}\n`;

const read = (): string[] =>
  (existsSync(page) ? readFileSync(page, 'utf8') : '# Checks against the outside\n').split(heading);

/** Titles of all sections, in their order. */
export const titles = (): string[] =>
  read()
    .slice(1)
    .map((text) => text.split('\n', 1)[0] ?? '');

/** What stands on the page under a title. */
export const sectionOf = (title: string): string | undefined => read().find((text) => text.startsWith(`${title}\n`));

/** Puts a section in the place of the one with its title; nothing takes it away. Test files run at once: one writes at a time. */
export function keepSection(title: string, text: string | undefined): void {
  const lock = `${page}.lock`;
  for (let free = false; !free; ) {
    try {
      mkdirSync(lock);
      free = true;
    } catch {
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20);
    }
  }
  try {
    const others = read().filter((one, index) => index > 0 && !one.startsWith(`${title}\n`));
    const sections = text === undefined ? others : [...others, text];
    writeFileSync(page, [preface, ...sections.sort(inOrder)].join(heading));
  } finally {
    rmdirSync(lock);
  }
}
