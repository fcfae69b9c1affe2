// The lines that must be JavaScript: a wasm module cannot load itself.
import init, { build } from "./hangtrue_builder.js";

const text = async (name) => (await fetch(name)).text();
const names = ["embed/hangtrue-profile-1.schema.json", "embed/snippet.html"];
const [schema, snippet] = await Promise.all([...names.map(text), begun(init())]);
build(schema, snippet);
