// The page by a dealer's rules: `dealer.html?profile=` names a file.

const profile = new URLSearchParams(location.search).get("profile") ?? "";
const rules = rulesOf(profile);
const module = async () => {
  const { default: init, startPage } = await import("{{glue}}");
  await init({ module_or_path: new URL("{{wasm}}", import.meta.url) });
  return startPage;
};
const startPage = await begun(module());
const read = await rules;
startPage(...read);

// On the first visit some of this has come before the worker answered for the page: what it has
// not seen go by is asked for once more, for it to keep beside the build.
const keep = async () => {
  const wasm = new URL("{{wasm}}", import.meta.url);
  const page = location.pathname + location.search;
  for (const file of [page, import.meta.url, profile, "{{glue}}", wasm]) {
    if (!(await caches.match(file))) await fetch(file, { credentials: "omit" });
  }
};
// Rules that were not read, of another origin perhaps, are not asked for again.
if (read[0]) {
  try {
    // The home screen leads to the rules that were last read: see main.js.
    localStorage.setItem("hangtrue-dealer", location.search);
  } catch {
    // Without storage nothing is remembered.
  }
  const keepOrNot = () => keep().catch(() => undefined);
  if (navigator.serviceWorker?.controller) keepOrNot();
  else navigator.serviceWorker?.addEventListener("controllerchange", keepOrNot, { once: true });
}
