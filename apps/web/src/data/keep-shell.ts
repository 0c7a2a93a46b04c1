/** Lets the sheets open while the line is down; only in the built page, and where the browser can. */
export function keepShell(): void {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  addEventListener("load", () => {
    // Without it the page works as ever, only not while the line is down.
    navigator.serviceWorker.register("/shell.js").then(keepPartsInUse, () => undefined);
  });
}

/** The twins and the sheets one turns to most, fetched once the first one stands: they open without a line as well. */
const keptAhead = [
  () => import("../screens/scheme/SchemeSheet.tsx"),
  () => import("../twin/ChosenSlip.tsx"),
  () => import("../twin/NewUnitSlip.tsx"),
  () => import("../twin/NewOpeningSlip.tsx"),
  () => import("../screens/desk/Desk.tsx"),
];

/** The parts this page came with were fetched before the worker stood there; asked for again, they are kept. */
async function keepPartsInUse(): Promise<void> {
  await navigator.serviceWorker.ready;
  await Promise.allSettled(keptAhead.map((fetchPart) => fetchPart()));
  const parts = performance.getEntriesByType("resource").map(({ name }) => name);
  const own = parts.filter((name) => name.startsWith(`${location.origin}/assets/`));
  await Promise.allSettled(own.map((name) => fetch(name, { cache: "force-cache" })));
}
