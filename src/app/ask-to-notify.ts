/** Asks once whether timers may be told as notifications; called from the tap that starts the first. */
export async function askToNotify(): Promise<void> {
  if ('Notification' in window && Notification.permission === 'default') await Notification.requestPermission();
}
