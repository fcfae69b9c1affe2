// <hangtrue-survey>: the walk of Hangtrue in an element of any page.
//
// Only what a wasm module cannot be is here: a class of JavaScript, its attributes and
// events. Until the element is near the viewport or touched, nothing else is loaded.
import { Survey, start } from "{{glue}}";

const TAG = "hangtrue-survey";
const VERSION = "{{version}}";
const WASM = { url: new URL("{{wasm}}", import.meta.url), integrity: "{{integrity}}" };
/** Orders' links open the full page beside this folder. */
const PAGE = new URL("../", import.meta.url).href;
const PROFILE_MOST = 262144;
const WORDS = {
  en: ["Loading the survey…", "The survey cannot run here.", "Finish the survey."],
  es: ["Cargando…", "La medición no puede funcionar aquí.", "Termine la medición."],
  fr: ["Chargement…", "Le relevé ne peut pas fonctionner ici.", "Terminez le relevé."],
};
// Until somebody begins, the element has the height that is reserved for it, so that
// nothing around it moves; from then on it has the height of what it shows.
const HOST = ":host{display:block!important;box-sizing:border-box;";
const HEIGHT = "height:var(--hangtrue-height,720px)}:host([hidden]){display:none!important}";
const RESERVED = `${HOST}overflow:hidden;${HEIGHT}#app{height:100%;overflow:auto}
#wait{all:initial;display:block;padding:16px;font:17px/1.5 system-ui,sans-serif;color:inherit}`;
const GROWN = `${HOST}min-${HEIGHT}`;

/** A constructed style sheet; where there are none, its text. */
const sheet = (text) => {
  try {
    const made = new CSSStyleSheet();
    made.replaceSync(text);
    return made;
  } catch {
    return text;
  }
};

const adopt = (root, ...sheets) => {
  if (sheets.every((one) => typeof one !== "string")) root.adoptedStyleSheets = sheets;
  else {
    for (const old of root.querySelectorAll("style")) old.remove();
    for (const text of sheets) root.append(make("style", { textContent: text }));
  }
};

const make = (name, properties, ...children) => {
  const element = Object.assign(document.createElement(name), properties);
  element.append(...children);
  return element;
};

const reserved = sheet(RESERVED);
const grown = sheet(GROWN);
let loaded;

/** Loads the module once for all elements: its sheet stands in a section of its own. */
const load = () =>
  (loaded ??= (async () => {
    const response = await fetch(WASM.url, { integrity: WASM.integrity, credentials: "omit" });
    if (!response.ok) throw new Error(`${WASM.url.pathname}: ${response.status}`);
    // Not by streaming: a host that sends another media type must not matter.
    const module = await WebAssembly.compile(await response.arrayBuffer());
    await start(module);
    const [style] = WebAssembly.Module.customSections(module, "style");
    return sheet(new TextDecoder().decode(style));
  })().catch((error) => {
    loaded = undefined;
    throw error;
  }));

class HangtrueSurvey extends HTMLElement {
  static formAssociated = true;
  static observedAttributes = ["profile", "unit", "order", "theme", "required"];
  static version = VERSION;

  #internals = this.attachInternals?.();
  #root = this.attachShadow({ mode: "open" });
  /** What was set as a property; it goes before the attribute, which is the author's. */
  #own = {};
  #survey;
  #place;
  #style;
  #draft;
  #link = "";
  #near;
  #grown = false;
  #wanted = false;
  #asked = 0;

  constructor() {
    super();
    for (const kind of ["click", "input"]) {
      this.#root.addEventListener(kind, () => this.#survey && this.#grow());
    }
  }

  get profile() {
    return this.#get("profile");
  }
  set profile(value) {
    this.#put("profile", value);
  }
  get unit() {
    return this.#get("unit");
  }
  set unit(value) {
    this.#put("unit", value);
  }
  get order() {
    return this.#get("order");
  }
  set order(value) {
    this.#put("order", value);
  }
  get theme() {
    return this.#get("theme") ?? "auto";
  }
  set theme(value) {
    this.#put("theme", value);
  }
  get name() {
    return this.getAttribute("name") ?? "";
  }
  get form() {
    return this.#internals?.form ?? null;
  }
  /** The order's link; empty while something stands against sending it. */
  get value() {
    return this.#link;
  }
  get validity() {
    return this.#internals?.validity;
  }
  get validationMessage() {
    return this.#internals?.validationMessage ?? "";
  }
  checkValidity() {
    return this.#internals?.checkValidity() ?? true;
  }
  reportValidity() {
    return this.#internals?.reportValidity() ?? true;
  }

  connectedCallback() {
    // A property set before the class was known hides the class's own.
    for (const name of ["profile", "unit", "order", "theme"]) {
      if (Object.hasOwn(this, name)) {
        const value = this[name];
        delete this[name];
        this[name] = value;
      }
    }
    this.#validate();
    this.#wait();
    if (this.#wanted) return this.#show();
    const touched = () => this.#want();
    for (const kind of ["pointerdown", "focusin", "keydown"]) {
      this.addEventListener(kind, touched, { once: true });
    }
    this.#near = new IntersectionObserver(
      (seen) => seen.some((one) => one.isIntersecting) && this.#want(),
      { rootMargin: "400px" },
    );
    this.#near.observe(this);
  }

  disconnectedCallback() {
    this.#near?.disconnect();
    this.#asked++;
    if (!this.#survey) return;
    this.#draft = this.#survey.leave();
    this.#survey = undefined;
    this.#grown = false;
    this.#root.replaceChildren();
  }

  attributeChangedCallback(name) {
    if (name === "required") this.#validate();
    else if (this.#survey && !(name in this.#own)) this.#changed(name);
  }

  formResetCallback() {
    this.#survey?.restart();
  }

  #get(name) {
    return name in this.#own ? this.#own[name] : this.getAttribute(name);
  }

  #put(name, value) {
    if (value == null) delete this.#own[name];
    else this.#own[name] = value;
    if (this.#survey) this.#changed(name);
  }

  #changed(name) {
    if (name === "profile") this.#again();
    else if (name === "unit" && this.unit) this.#survey.setUnit(this.unit);
    else if (name === "order" && this.order) this.#survey.open(this.order);
    else if (name === "theme") this.#place.dataset.theme = this.theme;
  }

  async #again() {
    const asked = ++this.#asked;
    const rules = await this.#rules();
    if (asked === this.#asked) this.#rule(...rules);
  }

  /** What stands here until the survey does: the author's own, or a word of ours. */
  #wait(failed) {
    const [name, word] = failed ? ["blocked", 1] : ["loading", 0];
    const text = make("p", { textContent: this.#word(word) });
    const slots = [make("slot", { name }, text), make("slot")];
    this.#root.replaceChildren(
      make("div", { id: "wait", role: "status", part: "waiting" }, ...slots),
    );
    adopt(this.#root, reserved);
  }

  #word(index) {
    const lang = this.closest("[lang]")?.lang.slice(0, 2);
    return (WORDS[lang] ?? WORDS.en)[index];
  }

  #grow() {
    if (this.#grown) return;
    this.#grown = true;
    adopt(this.#root, grown, this.#style);
  }

  #want() {
    this.#near?.disconnect();
    this.#wanted = true;
    if (this.isConnected && !this.#survey) this.#show();
  }

  async #show() {
    const asked = ++this.#asked;
    const rules = this.#rules();
    try {
      this.#style = await load();
    } catch (error) {
      if (asked !== this.#asked) return;
      this.#wait(true);
      this.#emit("error", { code: "load", message: String(error?.message ?? error) });
      return;
    }
    const [json, fault] = await rules;
    if (asked !== this.#asked || this.#survey) return;
    this.#place = make("div", { id: "app", part: "survey" });
    this.#place.dataset.theme = this.theme;
    this.#root.replaceChildren(this.#place);
    adopt(this.#root, reserved, this.#style);
    const kept = this.hasAttribute("remember") ? `hangtrue-survey:${this.id}` : undefined;
    const told = (...news) => this.#tell(...news);
    this.#survey = new Survey(this.#place, PAGE, this.#draft, kept, told);
    this.#rule(json, fault);
    if (this.unit) this.#survey.setUnit(this.unit);
    if (this.order) this.#survey.open(this.order);
    this.#emit("ready", { version: VERSION });
  }

  /** The dealer's rules as JSON, or what kept them away. */
  async #rules() {
    const given = this.profile;
    if (given == null || given === "") return [];
    try {
      return [typeof given === "string" ? await this.#fetch(given) : JSON.stringify(given)];
    } catch (error) {
      return [undefined, String(error.message)];
    }
  }

  /** Rules by them; whatever is wrong with them, the survey goes on by the built-in rules. */
  #rule(json, fault) {
    if (fault) this.#survey.ruleByDefault(fault);
    else fault = this.#survey.ruleBy(json);
    if (fault) this.#emit("error", { code: "profile", message: fault });
  }

  async #fetch(address) {
    const url = new URL(address, document.baseURI);
    const own = [location.origin, WASM.url.origin];
    if (!own.includes(url.origin)) {
      throw new Error(`${address} is of another origin than this page and its script.`);
    }
    const response = await fetch(url, { credentials: "omit" });
    if (!response.ok) throw new Error(`${address}: ${response.status}`);
    if (response.headers.get("content-length") > PROFILE_MOST) {
      throw new Error(`${address} is larger than ${PROFILE_MOST} bytes.`);
    }
    return response.text();
  }

  #tell(what, link, line, order) {
    this.#link = link ?? "";
    this.#internals?.setFormValue(this.#link || null);
    this.#validate();
    this.#emit(what, { order: JSON.parse(order), link, line });
  }

  #validate() {
    if (!this.#internals?.setValidity) return;
    const missing = this.hasAttribute("required") && !this.#link;
    this.#internals.setValidity({ valueMissing: missing }, missing ? this.#word(2) : "", this.#place);
  }

  #emit(what, detail) {
    const init = { detail, bubbles: true, composed: true };
    this.dispatchEvent(new CustomEvent(`hangtrue-${what}`, init));
  }
}

const first = customElements.get(TAG);
if (first) {
  console.warn(`<${TAG}> ${VERSION}: version ${first.version} was here first and stays.`);
} else {
  customElements.define(TAG, HangtrueSurvey);
}

export { HangtrueSurvey };
