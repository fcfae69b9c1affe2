// The page by a dealer's rules: `dealer.html?profile=` names a file of this page's origin.

const profile = new URLSearchParams(location.search).get("profile") ?? "";
const rules = async () => {
  const url = new URL(profile, location.href);
  if (url.origin !== location.origin) {
    throw new Error(`${profile} is of another origin than this page.`);
  }
  const response = await fetch(url, { credentials: "omit" });
  if (!response.ok) throw new Error(`${profile}: ${response.status}`);
  return response.text();
};

const read = rules().then((json) => [json], (error) => [undefined, error.message]);
const module = async () => {
  const { default: init, startPage } = await import("{{glue}}");
  await init({ module_or_path: new URL("{{wasm}}", import.meta.url) });
  return startPage;
};
const startPage = await begun(module());
startPage(...(await read));

// On the first visit some of this has come before the worker answered for the page: what it has
// not seen go by is asked for once more, for it to keep beside the build.
const keep = async () => {
  const wasm = new URL("{{wasm}}", import.meta.url);
  const page = location.pathname + location.search;
  for (const file of [page, import.meta.url, profile, "{{glue}}", wasm]) {
    if (!(await caches.match(file))) await fetch(file, { credentials: "omit" });
  }
};
const keepOrNot = () => keep().catch(() => undefined);
if (navigator.serviceWorker?.controller) keepOrNot();
else navigator.serviceWorker?.addEventListener("controllerchange", keepOrNot, { once: true });
