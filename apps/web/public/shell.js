// Opens the sheets while the line is down: the page and its parts are asked for as ever, and the last answer stands in
// where none comes. Nothing under /api is ever kept.
const shelf = "cornerway-shell-1";

addEventListener("install", (event) => {
  event.waitUntil(caches.open(shelf).then((kept) => kept.add("/")));
  skipWaiting();
});

addEventListener("activate", (event) => event.waitUntil(dropOldShelves().then(() => clients.claim())));

addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  const isOfService = /^\/(api|health|ready|metrics)(\/|$)/.test(pathname);
  if (request.method !== "GET" || origin !== location.origin || isOfService) return;
  event.respondWith(request.mode === "navigate" ? page(request) : part(request));
});

/** Every address of a screen is the one page. */
async function page(request) {
  const kept = await caches.open(shelf);
  try {
    const answer = await fetch(request);
    if (answer.ok && answer.type === "basic") await kept.put("/", answer.clone());
    return answer;
  } catch (error) {
    const last = await kept.match("/");
    if (last === undefined) throw error;
    return last;
  }
}

/** Built parts carry their digest in their name: one that is kept is the one that is asked for. */
async function part(request) {
  const kept = await caches.open(shelf);
  const lasting = new URL(request.url).pathname.startsWith("/assets/");
  const last = lasting ? await kept.match(request) : undefined;
  if (last !== undefined) return last;
  try {
    const answer = await fetch(request);
    if (answer.ok && answer.type === "basic") await kept.put(request, answer.clone());
    return answer;
  } catch (error) {
    const standIn = await kept.match(request);
    if (standIn === undefined) throw error;
    return standIn;
  }
}

async function dropOldShelves() {
  for (const name of await caches.keys()) if (name !== shelf) await caches.delete(name);
}
