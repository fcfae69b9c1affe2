// Keeps one whole build of the site for the times without a network. One worker, at this one
// address for ever; the build puts in its own name and its files.
const BUILD = "{{build}}";
const FILES = "{{files}}".split(" ");
// What is not in the list: a dealer's rules, and what only they need. The newest that was seen.
const OTHERS = "hangtrue-others";

const fill = async () => {
  const cache = await caches.open(BUILD);
  try {
    // Never from the browser's own cache: a build is whole or it is not there.
    await cache.addAll(FILES.map((file) => new Request(file, { cache: "reload" })));
  } catch (error) {
    await caches.delete(BUILD);
    throw error;
  }
};

const clear = async () => {
  const old = (name) => name.startsWith("hangtrue-") && name !== BUILD && name !== OTHERS;
  await Promise.all((await caches.keys()).filter(old).map((name) => caches.delete(name)));
  if (await caches.has(OTHERS)) {
    const others = await caches.open(OTHERS);
    const stale = ({ url }) => !new URL(url).pathname.endsWith(".json");
    await Promise.all((await others.keys()).filter(stale).map((one) => others.delete(one)));
  }
  await clients.claim();
};

const newest = async (request) => {
  const cache = await caches.open(OTHERS);
  try {
    const answer = await fetch(request);
    if (answer.ok) await cache.put(request, answer.clone());
    return answer;
  } catch (error) {
    const kept = await cache.match(request);
    if (kept) return kept;
    throw error;
  }
};

const answer = async (request) => {
  const cache = await caches.open(BUILD);
  const { pathname } = new URL(request.url);
  const isPage = request.mode === "navigate";
  const file = isPage && pathname.endsWith("/") ? new URL("index.html", request.url) : request;
  const kept = await cache.match(file, { ignoreSearch: isPage });
  if (kept) return kept;
  return newest(request);
};

addEventListener("install", (event) => event.waitUntil(fill()));
addEventListener("activate", (event) => event.waitUntil(clear()));
addEventListener("message", (event) => {
  // Only on a person's tap: see offline.js.
  if (event.data === "take over") skipWaiting();
  if (event.data === "claim") event.waitUntil(clients.claim());
});
addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  if (method === "GET" && url.startsWith(registration.scope)) {
    event.respondWith(answer(event.request));
  }
});
