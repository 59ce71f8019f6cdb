import type { AirReading, Shop } from './shop.ts';

/** The air changes with the weather: what was read longer ago says nothing of now. */
const holdsFor = 24 * 3_600_000;

/** The newest reading of the shop’s air; of two at one time, what was noted last. */
export const latestAir = ({ air = [] }: Pick<Shop, 'air'>): AirReading | undefined =>
  air.reduce<AirReading | undefined>((newest, one) => (newest && newest.at > one.at ? newest : one), undefined);

/** The shop's air as it was read within the last day; undefined when nobody looked. What a wrong clock dated ahead is passed over. */
export const airNow = ({ air = [] }: Pick<Shop, 'air'>, now: number): AirReading | undefined =>
  latestAir({ air: air.filter(({ at }) => Math.abs(now - at) <= holdsFor) });
