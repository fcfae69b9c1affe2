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

// Rules that were not read, of another origin perhaps, are not asked for again.
if (read[0]) {
  try {
    // The home screen leads to the rules that were last read: see main.js.
    localStorage.setItem("hangtrue-dealer", location.search);
  } catch {
    // Without storage nothing is remembered.
  }
  const wasm = new URL("{{wasm}}", import.meta.url);
  const page = location.pathname + location.search;
  kept([page, import.meta.url, profile, "{{glue}}", wasm]);
}
