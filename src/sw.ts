import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope & { __WB_MANIFEST: { url: string; revision: string | null }[] };

precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

// A file shared with the app is put by for the screen that takes records in (`screens/data/incoming-file.ts`).
registerRoute(
  ({ url }) => url.href === new URL('receive', self.registration.scope).href,
  async ({ request }) => {
    const file = (await request.formData()).get('file');
    if (file instanceof File) await (await caches.open('boardwright-shared')).put('file', new Response(file));
    return Response.redirect('./#/data', 303);
  },
  'POST',
);

// A newer version takes over only when the app asks for it, between step flows.
self.addEventListener('message', (event) => {
  if (event.data?.type === 'SKIP_WAITING') void self.skipWaiting();
});
