import type { AirReading, Shop } from './shop.ts';

/** The air changes with the weather: what was read longer ago says nothing of now. */
const holdsFor = 24 * 3_600_000;

/** The newest reading of the shop’s air; of two at one time, what was noted last. */
export const latestAir = ({ air = [] }: Pick<Shop, 'air'>): AirReading | undefined =>
  air.reduce<AirReading | undefined>((newest, one) => (newest && newest.at > one.at ? newest : one), undefined);

/** The shop's air as it was read within the last day; undefined when nobody looked. */
export function airNow(shop: Pick<Shop, 'air'>, now: number): AirReading | undefined {
  const latest = latestAir(shop);
  return latest && now - latest.at <= holdsFor ? latest : undefined;
}
