// A page beside the walk; by a dealer's rules where `?profile=` names a file.
import init, { startPage } from "./hangtrue_web.js";

const profile = new URLSearchParams(location.search).get("profile");
const rules = profile === null ? [] : rulesOf(profile);
await begun(init());
const read = await rules;
startPage(...read);
if (read[0]) kept([profile]);
