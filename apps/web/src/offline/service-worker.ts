/// <reference lib="webworker" />
import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope & { readonly __WB_MANIFEST: { url: string; revision: string | null }[] };

// The app itself opens without a network. What it shows is kept by the pages that need it.
cleanupOutdatedCaches();
precacheAndRoute(self.__WB_MANIFEST);
registerRoute(
  new NavigationRoute(createHandlerBoundToURL('index.html'), {
    denylist: [/^\/(v1|docs|health|ready|openapi\.json)(\/|$)/],
  }),
);

// The very first visit reads everything ahead, so that the network may go right after it.
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

// A new version takes over at the next start, never under a form that is being filled in.
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') void self.skipWaiting();
});
