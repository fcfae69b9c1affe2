// The page that hangs the door; by a dealer's rules where `?profile=` names a file of this
// page's origin.
import init, { startPage } from "./hangtrue_web.js";

const profile = new URLSearchParams(location.search).get("profile");
const rules = async () => {
  if (profile === null) return undefined;
  const url = new URL(profile, location.href);
  if (url.origin !== location.origin) {
    throw new Error(`${profile} is of another origin than this page.`);
  }
  const response = await fetch(url, { credentials: "omit" });
  if (!response.ok) throw new Error(`${profile}: ${response.status}`);
  return response.text();
};

const read = rules().then((json) => [json], (error) => [undefined, error.message]);
await begun(init());
startPage(...(await read));
