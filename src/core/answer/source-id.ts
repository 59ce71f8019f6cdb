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
  | 'osha-3157'
  | 'osha-memory'
  | 'geometry'
  | 'common-practice'
  | 'assumption'
  | 'label';
