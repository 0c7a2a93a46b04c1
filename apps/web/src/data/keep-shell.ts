/** Lets the sheets open while the line is down; only in the built page, and where the browser can. */
export function keepShell(): void {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  addEventListener("load", () => {
    // Without it the page works as ever, only not while the line is down.
    navigator.serviceWorker.register("/shell.js").then(keepPartsInUse, () => undefined);
  });
}

/** The parts this page came with were fetched before the worker stood there; asked for again, they are kept. */
async function keepPartsInUse(): Promise<void> {
  await navigator.serviceWorker.ready;
  const parts = performance.getEntriesByType("resource").map(({ name }) => name);
  const own = parts.filter((name) => name.startsWith(`${location.origin}/assets/`));
  await Promise.allSettled(own.map((name) => fetch(name, { cache: "force-cache" })));
}
