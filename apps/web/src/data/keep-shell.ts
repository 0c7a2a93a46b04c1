/**
 * Lets the sheets open while the line is down, once the first one stands, which it must not keep waiting; only in the built
 * page, and where the browser can.
 */
export async function keepShell(): Promise<void> {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  watchHand();
  await firstSheet();
  await idle();
  // Without it the page works as ever, only not while the line is down.
  navigator.serviceWorker.register("/shell.js").then(keepPartsInUse, () => undefined);
}

/** Waits until a sheet or a page stands. */
const firstSheet = (): Promise<void> =>
  new Promise((stands) => {
    if (document.querySelector("main") !== null) return stands();
    const watch = new MutationObserver(() => {
      if (document.querySelector("main") === null) return;
      watch.disconnect();
      stands();
    });
    watch.observe(document.body, { childList: true, subtree: true });
  });

const idle = (): Promise<void> =>
  new Promise((done) => {
    if ("requestIdleCallback" in globalThis) requestIdleCallback(() => done(), { timeout: longEnoughMs });
    else setTimeout(done, longEnoughMs);
  });

/** True while a pointer is down: a hand that draws is not held up by what is fetched ahead. */
let inHand = false;

function watchHand(): void {
  addEventListener("pointerdown", () => (inHand = true), { capture: true });
  for (const ends of ["pointerup", "pointercancel"]) addEventListener(ends, () => (inHand = false), { capture: true });
}

async function handFree(): Promise<void> {
  while (inHand)
    await new Promise((free) => {
      for (const ends of ["pointerup", "pointercancel"]) addEventListener(ends, free, { once: true });
    });
}

/** Where a browser does not say when it is idle, or is not for so long, ms. */
const longEnoughMs = 1000;

/**
 * Everything one draws with, and the sheets one turns to most, fetched once the first one stands: they open without a
 * line as well.
 */
const keptAhead = [
  () => import("../hand/acts.ts"),
  () => import("../hand/carry.ts"),
  () => import("../paper/ThirdView.tsx"),
  () => import("../drawing/empty/EmptyElevation.tsx"),
  () => import("../drawing/empty/TeachingDrawings.tsx"),
  () => import("../sheet/LeaderLayer.tsx"),
  () => import("../notes/NoteFilters.tsx"),
  () => import("../screens/scheme/SchemeSheet.tsx"),
  () => import("../screens/scheme/BeginSheet.tsx"),
  () => import("../screens/scheme/DraftFooter.tsx"),
  () => import("../screens/scheme/DraftSlips.tsx"),
  () => import("../screens/scheme/UndoesWatch.tsx"),
  () => import("../screens/scheme/AskedSlip.tsx"),
  () => import("../screens/scheme/ConflictSlip.tsx"),
  () => import("../screens/scheme/SchemeKeysSlip.tsx"),
  () => import("../screens/scheme/SentScheme.tsx"),
  () => import("../screens/scheme/file-reading.ts"),
  () => import("../screens/scheme/tour/Tour.tsx"),
  () => import("../room/KeysSlip.tsx"),
  () => import("../forces/ChosenForces.tsx"),
  () => import("../forces/ForcesSection.tsx"),
  () => import("../wording/act-sentence.ts"),
  () => import("../screens/desk/Desk.tsx"),
  () => import("../twin/ChosenSlip.tsx"),
  () => import("../twin/chosen/ChosenPart.tsx"),
  () => import("../twin/chosen/Alignments.tsx"),
  () => import("../twin/NewBeamSlip.tsx"),
  () => import("../twin/NewOpeningSlip.tsx"),
  () => import("../twin/NewPostSlip.tsx"),
  () => import("../twin/NewUnitSlip.tsx"),
  () => import("../twin/OpenWallSlip.tsx"),
  () => import("../twin/RemoveSlip.tsx"),
  () => import("../twin/SeveralSlip.tsx"),
  () => import("../twin/adding/AddBeam.tsx"),
  () => import("../twin/adding/AddFound.tsx"),
  () => import("../twin/adding/AddLoad.tsx"),
  () => import("../twin/adding/AddLock.tsx"),
  () => import("../twin/adding/AddSeat.tsx"),
  () => import("../twin/adding/AddTie.tsx"),
  () => import("../twin/adding/AddUse.tsx"),
  () => import("../twin/adding/LayOut.tsx"),
];

/** The parts this page came with were fetched before the worker stood there; asked for again, they are kept. */
async function keepPartsInUse(): Promise<void> {
  await navigator.serviceWorker.ready;
  await fewAtOnce(keptAhead);
  const parts = performance.getEntriesByType("resource").map(({ name }) => name);
  const own = parts.filter((name) => name.startsWith(`${location.origin}/assets/`));
  await fewAtOnce(own.map((name) => () => fetch(name, { cache: "force-cache" })));
  performance.mark(shellKept);
}

/** Marked once all that is fetched ahead has been asked for: from then on the page does without a line. */
const shellKept = "shell kept";

/** A hundred at once would hold up a hand that draws. What cannot be fetched now is asked for when the page opens again. */
async function fewAtOnce(fetches: readonly (() => Promise<unknown>)[]): Promise<void> {
  for (let from = 0; from < fetches.length; from += FEW) {
    await handFree();
    await idle();
    await Promise.allSettled(fetches.slice(from, from + FEW).map((fetchPart) => fetchPart()));
  }
}

/** As many as a browser asks one host for at a time over HTTP/1.1; common practice, no published source. */
const FEW = 6;
