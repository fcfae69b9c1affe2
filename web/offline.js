
// The worker that keeps this build for the times without a network. A newer one waits: the page
// is told, and says when it may take over.
const work = async () => {
  const address = new URL("worker.js", document.baseURI).href;
  const policy = globalThis.trustedTypes?.createPolicy("hangtrue-worker", {
    createScriptURL: () => address,
  });
  const registration = await navigator.serviceWorker.register(
    policy ? policy.createScriptURL("") : address,
    { updateViaCache: "none" },
  );
  const page = document.getElementById("app");
  let asked = false;
  const tell = () => {
    // A first build waits for a moment too, in WebKit already as the page's controller: newer is
    // only what waits beside another.
    const { active, waiting } = registration;
    if (waiting && active && waiting !== active && navigator.serviceWorker.controller) {
      page.dispatchEvent(new Event("newer"));
    }
  };
  tell();
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", tell);
  });
  page.addEventListener("take-over", () => {
    asked = true;
    registration.waiting?.postMessage("take over");
  });
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (asked) location.reload();
  });
  // A page that was still on its way when the worker came up is not yet the worker's.
  const { active } = await navigator.serviceWorker.ready;
  if (!navigator.serviceWorker.controller) active.postMessage("claim");
};
if ("serviceWorker" in navigator) {
  work().catch(() => {
    // Refused by the browser or its owner: the page works, with a network.
  });
}
