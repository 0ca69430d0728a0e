/** Keeps the app itself on the device, so that it opens without a network. Browsers without it work on, online only. */
export function startOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  addEventListener('load', () => void navigator.serviceWorker.register('/service-worker.js').catch(() => undefined));
}
