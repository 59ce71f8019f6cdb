import type { SourceId } from '../core/answer/source-id.ts';
import { sources } from '../tables/sources.ts';

/** What a figure or a caution rests on, in brackets behind it. */
export function SourceMark({ of }: { of: SourceId }) {
  const { kind, title } = sources[of];
  return <span class="soft small">({kind === 'common-practice' ? 'common practice' : title.replace(/\.$/, '')})</span>;
}
