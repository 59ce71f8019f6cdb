import type { Contents } from '../contents.ts';
import { canonicalJson } from './canonical-json.ts';

/** So many records are written in a few milliseconds. */
const sliceSize = 200;

/** The canonical JSON of contents, written a few records at a time: the screen answers in between. */
export async function contentsText({ kinds, removed }: Contents): Promise<string> {
  const list = async (records: readonly unknown[]) => {
    const slices: string[] = [];
    for (let at = 0; at < records.length; at += sliceSize) {
      if (at > 0) await new Promise((done) => setTimeout(done));
      slices.push(canonicalJson(records.slice(at, at + sliceSize)).slice(1, -1));
    }
    return `[${slices.join(',')}]`;
  };
  const lists: string[] = [];
  for (const name of Object.keys(kinds).sort()) lists.push(`${JSON.stringify(name)}:${await list(kinds[name] ?? [])}`);
  return `{"kinds":{${lists.join(',')}},"removed":${await list(removed)}}`;
}
