// The lines that must be JavaScript: a wasm module cannot load itself.
import init from "./hangtrue_web.js";

// The second module comes while the first screens are used. Without a network it is tried again:
// what needs it waits, and says so.
const bring = async (first) => {
  const page = document.getElementById("app");
  // And the sheet for its screens.
  document.head.append(
    Object.assign(document.createElement("link"), { rel: "stylesheet", href: "later.css" }),
  );
  for (let pause = 1; ; pause = Math.min(2 * pause, 16)) {
    try {
      await WebAssembly.instantiateStreaming(fetch("hangtrue_rest.wasm"), { a: first });
      page.dispatchEvent(new Event("whole"));
      return;
    } catch {
      page.dispatchEvent(new Event("missing"));
    }
    await new Promise((again) => {
      setTimeout(again, 1000 * pause);
      addEventListener("online", again, { once: true });
    });
  }
};

// From the home screen it goes on by the rules of the dealer whose page was last used here.
let { search } = location;
if (search === "?installed") {
  try {
    search = localStorage.getItem("hangtrue-dealer") ?? search;
  } catch {
    // Without storage nothing is remembered.
  }
}
// Whoever goes by a dealer's rules needs the module that reads them.
const byRules = new URLSearchParams(search).has("profile");
if (byRules) {
  location.replace("dealer.html" + search + location.hash);
  // Nothing more is done here: WebKit may never give a page to a worker that the page before it was
  // registering while it was left.
  await new Promise(() => undefined);
}
bring(await begun(init()));
