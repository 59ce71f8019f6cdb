interface LaunchQueue {
  setConsumer(consumer: (launch: { readonly files: readonly FileSystemFileHandle[] }) => void): void;
}

/** Where the worker leaves a file that another app has shared with this one; `sw.ts` names the same. */
const shareBox = 'boardwright-shared';

/** Hands on the file that the app was opened with from the phone's files, or that was shared with it. */
export function onIncomingFile(take: (file: Blob) => void): void {
  const { launchQueue } = window as unknown as { launchQueue?: LaunchQueue };
  launchQueue?.setConsumer(async ({ files: [handle] }) => {
    if (handle) take(await handle.getFile());
  });
  void takeShared().then((file) => file && take(file));
}

/** The shared file, once: it is gone from the box afterwards. */
async function takeShared(): Promise<Blob | undefined> {
  if (!('caches' in window) || !(await caches.has(shareBox))) return undefined;
  const found = await (await caches.open(shareBox)).match('file');
  await caches.delete(shareBox);
  return found?.blob();
}
