import { signal } from "@preact/signals";

/** Whether a newer version of the app lies ready; it takes over only when the reader says so. */
export const newVersion = signal(false);

let waiting: ServiceWorker | null = null;

/** Keeps the whole app on the device. Where the device will not, the app still runs from the net. */
export async function keepApp(): Promise<void> {
  if (!("serviceWorker" in navigator) || !import.meta.env.PROD) return;
  await follow().catch(() => undefined);
}

/** Tells when a newer version has come. */
async function follow(): Promise<void> {
  const registration = await navigator.serviceWorker.register(new URL("sw.js", document.baseURI));
  tell(registration);
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", () => tell(registration));
  });
}

function tell(registration: ServiceWorkerRegistration): void {
  waiting = registration.waiting;
  newVersion.value = waiting !== null && navigator.serviceWorker.controller !== null;
}

export function useNewVersion(): void {
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  waiting?.postMessage("skip");
}
