// The lines that must be JavaScript: a wasm module cannot load itself.
import init from "./hangtrue_web.js";

await begun(init());
