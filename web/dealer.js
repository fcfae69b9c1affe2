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
