import type { Contents } from '../contents.ts';
import { canonicalJson } from './canonical-json.ts';

/** SHA-256 (FIPS 180-4) of the canonical JSON of the contents, in hexadecimal. */
export async function checksum({ kinds, removed }: Contents): Promise<string> {
  const bytes = new TextEncoder().encode(canonicalJson({ kinds, removed }));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
