// Keeps the pages of the bench and the bay for when there is no network, as they were when last seen. Nothing else is kept: what
// lies elsewhere goes past. With a network every page is fetched anew, so that a locked book or a signed-out person shows nothing old.
"use strict";
const KEPT = "bay";
const LONGEST_MS = 12 * 3600 * 1000; // a working day, as long as a session
const isOurs = (address) =>
  address.origin === location.origin && (/^\/jobs\/[a-z2-7]{26}\/(bench|bay(\/.*)?)$/.test(address.pathname) || address.pathname.startsWith("/files/"));

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("fetch", (event) => {
  if (event.request.method === "GET" && isOurs(new URL(event.request.url))) {
    event.respondWith(freshOrKept(event.request));
  }
});

async function freshOrKept(request) {
  const kept = await caches.open(KEPT);
  const name = new URL(request.url).pathname;
  try {
    const answer = await fetch(request);
    if (answer.ok && answer.type === "basic" && !answer.redirected) {
      await kept.put(name, answer.clone());
    } else if (answer.type === "opaqueredirect" || answer.status === 403) {
      await caches.delete(KEPT); // signed out, or the book is locked
    }
    return answer;
  } catch (gone) {
    const old = await kept.match(name);
    if (old && Date.now() - Date.parse(old.headers.get("Date")) < LONGEST_MS) {
      return old;
    }
    throw gone;
  }
}
