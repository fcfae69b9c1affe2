// The worker that removes itself. Should the worker ever have to go, this file is put in its place,
// under its name: it throws away what was kept, and every page comes from the network again.
addEventListener("install", () => skipWaiting());
addEventListener("activate", (event) => {
  const retire = async () => {
    const ours = (await caches.keys()).filter((name) => name.startsWith("hangtrue-"));
    await Promise.all(ours.map((name) => caches.delete(name)));
    await registration.unregister();
    for (const page of await clients.matchAll({ type: "window" })) page.navigate(page.url);
  };
  event.waitUntil(retire());
});
