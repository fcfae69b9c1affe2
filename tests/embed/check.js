// Beside the compiler: the manifest against its published schema, the demo's profiles and
// orders against the schemas that go with the element, by a validator that is not ours.
import { readdirSync, readFileSync } from "node:fs";
import Ajv from "ajv";
import Ajv2020 from "ajv/dist/2020.js";

const json = (name) => JSON.parse(readFileSync(new URL(name, import.meta.url), "utf8"));
const EMBED = "../../dist/embed/";
let checked = 0;

/** Fails unless `value` passes, or does not. */
const holds = (validate, what, value, passes = true) => {
  checked++;
  if (validate(value) === passes) return;
  const told = validate.errors?.map(({ instancePath, message }) => `${instancePath} ${message}`);
  throw new Error(`${what} ${passes ? "does not pass" : "passes"}: ${told?.join("; ") ?? ""}`);
};

// The manifest, and that it says no more than there is. What the published schema lets be
// one of several kinds of declaration is here held to be an element's.
const manifest = json(`${EMBED}custom-elements.json`);
const schema = json("node_modules/custom-elements-manifest/schema.json");
schema.definitions.JavaScriptModule.properties.declarations.items = {
  $ref: "#/definitions/CustomElementDeclaration",
};
schema.definitions.JavaScriptModule.properties.exports.items = {
  $ref: "#/definitions/CustomElementExport",
};
const published = new Ajv({ strict: false }).compile(schema);
holds(published, "custom-elements.json", manifest);
const [{ path, declarations, exports: exported }] = manifest.modules;
for (const spoil of [
  (copy) => delete copy.schemaVersion,
  (copy) => (copy.modules[0].kind = "script"),
  (copy) => delete copy.modules[0].declarations[0].attributes[0].name,
  (copy) => delete copy.modules[0].exports[0].declaration,
]) {
  const copy = structuredClone(manifest);
  spoil(copy);
  holds(published, `a manifest after ${spoil}`, copy, false);
}
const package_ = json(`${EMBED}package.json`);
const script = readFileSync(new URL(EMBED + path, import.meta.url), "utf8");
const [element] = declarations;
const present = [
  [`./${path}`, package_.exports["."].default],
  [`./${path}`, package_.main],
  [exported[0].name, element.tagName],
  [exported[0].declaration.name, element.name],
];
for (const [one, other] of present) {
  if (one !== other) throw new Error(`the manifest has ${one}, the package ${other}`);
}
for (const { name } of element.attributes) {
  if (!script.includes(`"${name}"`)) throw new Error(`the script knows no attribute ${name}`);
}
for (const { name } of element.events) {
  const word = name.replace("hangtrue-", "");
  if (!name.startsWith("hangtrue-")) throw new Error(`an event is called ${name}`);
  // `change` and `complete` are told by the module, the others by the script.
  if (!script.includes(`"${word}"`) && !["change", "complete"].includes(word)) {
    throw new Error(`the script tells no ${name}`);
  }
}

// Profiles and orders. A format that JSON Schema leaves to the reader is the reader's.
const ajv = new Ajv2020({ allowUnionTypes: true, validateFormats: false });
const profile = ajv.compile(json(`${EMBED}hangtrue-profile-1.schema.json`));
const order = ajv.compile(json(`${EMBED}hangtrue-order-1.schema.json`));
const demos = "../../demo/";
for (const name of readdirSync(new URL(`${demos}profiles/`, import.meta.url))) {
  const demo = json(`${demos}profiles/${name}`);
  holds(profile, name, demo);
  for (const [key, value] of Object.entries({
    revision: 0,
    format: "hangtrue-profile/2",
    name: "",
    unit: "cm",
    colour: {},
    languages: ["de"],
    limits: { width: { most: "96 in" } },
  })) {
    holds(profile, `${name} with another ${key}`, { ...demo, [key]: value }, false);
  }
}
const demo = json(`${demos}orders/demo-2.json`);
holds(order, "demo-2.json", demo);
for (const [key, value] of Object.entries({
  format: "hangtrue-order/2",
  unit: "cm",
  readings: { depth: "9 1/2" },
  date: 7,
  prepared: "yes",
  extra: 1,
})) {
  holds(order, `an order with another ${key}`, { ...demo, [key]: value }, false);
}
console.info(`${checked} documents held against their schemas`);
