import type { Glueup } from '../../store/records/glueup.ts';
import { clockTime } from './clock-time.ts';

/** What happened at this glue-up, as it happened. */
export function RunLog({ glueup, now }: { glueup: Glueup; now: number }) {
  return (
    <>
      <h2>Log</h2>
      <ol class="rows">
        {glueup.log?.map(({ at, text }) => (
          <li>
            <span>{text}</span>
            <span class="soft small">{clockTime(at, now)}</span>
          </li>
        ))}
      </ol>
    </>
  );
}
