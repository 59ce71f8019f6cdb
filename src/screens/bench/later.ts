// What home shows once the rest of it stands.
export { KeepSafe } from './keep-safe.tsx';
export { readLater } from './read-later.ts';
