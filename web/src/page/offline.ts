// Keeps the page on the device, and offers a new version without forcing it on anybody.

export interface Keeping {
  kept: boolean; // works offline from now on
  fresh: (() => void) | undefined; // switches to the waiting version
}

export function keepOffline(changed: (now: Keeping) => void): void {
  if (!('serviceWorker' in navigator) || import.meta.env.MODE === 'one-file') return;
  const { serviceWorker } = navigator;
  const now: Keeping = { kept: false, fresh: undefined };

  const offer = (registration: ServiceWorkerRegistration) => {
    const { waiting } = registration;
    if (!waiting || !serviceWorker.controller) return;
    now.fresh = () => {
      serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
      waiting.postMessage({ type: 'SKIP_WAITING' });
    };
    changed(now);
  };

  serviceWorker.ready.then(() => {
    now.kept = true;
    changed(now);
  });
  serviceWorker.register('./sw.js').then((registration) => {
    offer(registration);
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', () => offer(registration));
    });
  }).catch(() => { /* the page still works while there is a connection */ });
}
