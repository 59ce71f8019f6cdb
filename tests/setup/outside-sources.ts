import type { SourceId } from '../../src/core/answer/source-id.ts';
import { sources } from '../../src/tables/sources.ts';

/** What only tests rest on: general-purpose libraries that do the same sum, and open standards. */
const testSources = {
  mathjs: { kind: 'library', title: 'mathjs, a general-purpose library for units, matrices and exact decimals.' },
  highs: { kind: 'library', title: 'HiGHS, a general-purpose solver of linear and mixed-integer programs.' },
  'ical.js': { kind: 'library', title: 'ical.js, a general-purpose reader of iCalendar files.' },
  'csv-parse': { kind: 'library', title: 'csv-parse, a general-purpose reader of CSV files.' },
  'rfc-4180': { kind: 'published', title: 'RFC 4180, Common format and MIME type for CSV files.' },
  'rfc-5545': { kind: 'published', title: 'RFC 5545, Internet calendaring and scheduling core object specification.' },
} as const;

export type OutsideSourceId = SourceId | keyof typeof testSources;

/** Everything that a check against the outside may rest on, with its kind. */
export const outsideSources: Readonly<Record<OutsideSourceId, { readonly kind: string; readonly title: string }>> = {
  ...sources,
  ...testSources,
};
