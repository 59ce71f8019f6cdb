/** The day of the calendar where the phone is, for example `2025-03-14`. */
export function today(now: number): string {
  const day = new Date(now);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}
