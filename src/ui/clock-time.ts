const time: Intl.DateTimeFormatOptions = { hour: 'numeric', minute: '2-digit' };

const dayOf = (at: number) => new Date(at).toDateString();

/** An instant as the clock in the shop shows it: the time today, with the day of the week on other days. */
export function clockTime(at: number, now: number): string {
  if (dayOf(at) === dayOf(now)) return new Date(at).toLocaleTimeString(undefined, time);
  const far = Math.abs(at - now) > 6 * 86_400_000;
  return new Date(at).toLocaleString(undefined, {
    ...time,
    ...(far ? { month: 'short', day: 'numeric' } : { weekday: 'short' }),
  });
}
