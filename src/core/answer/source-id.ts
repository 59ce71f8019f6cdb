/** The sources that figures rest on. `tables/sources.ts` says what each one is. */
export type SourceId =
  | 'wood-handbook'
  | 'wood-handbook-memory'
  | 'simpson-1998'
  | 'nhla'
  | 'nhla-memory'
  | 'ahec'
  | 'nist-sp811'
  | 'surfaced-thickness'
  | 'osha-1910-213'
  | 'osha-3157'
  | 'osha-memory'
  | 'rfc-5545'
  | 'rfc-4180'
  | 'geometry'
  | 'common-practice'
  | 'assumption'
  | 'label';
