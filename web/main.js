// The lines that must be JavaScript: a wasm module cannot load itself.
import init from "./hangtrue_web.js";

// Whoever goes by a dealer's rules needs the module that reads them.
const byRules = new URLSearchParams(location.search).has("profile");
if (byRules) location.replace("dealer.html" + location.search + location.hash);
else await init();
