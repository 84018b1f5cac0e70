// Keeps the pages at the saw and their job sheets. What the bench answers comes first and is kept; what is kept serves while
// it does not answer.
const SHELF = "ringwright-saw-1";

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

// A network that hangs is taken for one that is gone, where there is something kept.
const PATIENCE = 5000;
const late = () => new Promise((_, fail) => setTimeout(() => fail(new Error("The bench does not answer.")), PATIENCE));

const answer = async (request) => {
  const shelf = await caches.open(SHELF);
  const kept = await shelf.match(request.url);
  try {
    const coming = fetch(request);
    const fresh = await (kept ? Promise.race([coming, late()]) : coming);
    if (fresh.ok) await shelf.put(request.url, fresh.clone());
    return kept && fresh.status >= 500 ? kept : fresh;
  } catch (problem) {
    if (kept) return kept;
    throw problem;
  }
};

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method === "GET" && url.origin === self.location.origin) event.respondWith(answer(event.request));
});

self.addEventListener("message", (event) => {
  const urls = event.data?.keep ?? [];
  event.waitUntil(Promise.allSettled(urls.filter((url) => new URL(url).origin === self.location.origin).map((url) => answer(new Request(url)))));
});
