// <hangtrue-survey>: the walk of Hangtrue in an element of any page.
//
// Only what a wasm module cannot be is here: a class of JavaScript, its attributes and
// events. Until the element is near the viewport or touched, nothing else is loaded: then
// the wasm module, and the glue around it that wasm-bindgen writes.
const TAG = "hangtrue-survey";
const VERSION = "{{version}}";
const here = (name) => new URL(name, import.meta.url);
const WASM = here("{{wasm}}");
const GLUE = here("{{glue}}");
/** Orders' links open the full page beside this folder. */
const PAGE = here("../");
const PROFILE_MOST = 262144;
const OWN = ["profile", "unit", "order", "theme"];
const WORDS = {
  en: ["Loading the survey…", "The survey cannot run here.", "Finish the survey."],
  es: ["Cargando la medición…", "La medición no puede funcionar aquí.", "Termine la medición."],
  fr: ["Chargement du relevé…", "Le relevé ne peut pas fonctionner ici.", "Terminez le relevé."],
};

const sheet = (text) => {
  const made = new CSSStyleSheet();
  made.replaceSync(text);
  return made;
};
// Until somebody begins, the element has the height that is reserved for it, so that
// nothing around it moves; from then on it has the height of what it shows.
const base = sheet(`:host{display:block!important;box-sizing:border-box;min-height:var(--hangtrue-height,720px)}
:host([hidden]){display:none!important}
#wait{all:initial;display:block;padding:16px;font:17px/1.5 system-ui,sans-serif;color:CanvasText;color-scheme:light dark}
::slotted([hidden]){display:block!important}`);
const reserved = sheet(`:host{height:var(--hangtrue-height,720px);overflow:hidden}
#app{height:100%;overflow:auto}`);

const make = (name, properties, ...children) => {
  const element = Object.assign(document.createElement(name), properties);
  element.append(...children);
  return element;
};

/** The glue. `import()` knows no integrity; a preload does, and what it has checked is
 * what is then imported. Not every engine's preload checks: the hash is held here too.
 * The link stands in the shadow root, not in the host page. */
const glue = async (root) => {
  const integrity = "{{glue-integrity}}";
  const checks = [fetch(GLUE, { integrity, credentials: "omit" })];
  const link = make("link", { rel: "modulepreload", crossOrigin: "", integrity });
  if (link.relList.supports("modulepreload")) {
    checks.push(
      new Promise((done, failed) => {
        link.onload = done;
        link.onerror = () => failed(new Error(`${GLUE.pathname} did not load, or was changed`));
        link.href = GLUE;
        root.append(link);
      }),
    );
  }
  await Promise.all(checks);
  link.remove();
  return import(GLUE);
};

const compiled = async () => {
  const response = await fetch(WASM, { integrity: "{{integrity}}", credentials: "omit" });
  if (!response.ok) throw new Error(`${WASM.pathname}: ${response.status}`);
  // Not by streaming: a host that sends another media type must not matter.
  return WebAssembly.compile(await response.arrayBuffer());
};

let loaded;
/** Loads once for all elements. The sheet stands in a section of the module. */
const load = (root) =>
  (loaded ??= (async () => {
    const [module, { default: start, Survey }] = await Promise.all([compiled(), glue(root)]);
    await start({ module_or_path: module });
    const [style] = WebAssembly.Module.customSections(module, "style");
    return [Survey, sheet(new TextDecoder().decode(style))];
  })().catch((error) => {
    loaded = undefined;
    throw error;
  }));

class HangtrueSurvey extends HTMLElement {
  static formAssociated = true;
  static observedAttributes = [...OWN, "lang", "required"];
  static version = VERSION;
  static {
    for (const name of OWN) {
      Object.defineProperty(this.prototype, name, {
        get() {
          return this.#get(name);
        },
        set(value) {
          this.#put(name, value);
        },
        enumerable: true,
        configurable: true,
      });
    }
  }

  #internals = this.attachInternals();
  #root = this.attachShadow({ mode: "open" });
  /** What was set as a property; it goes before the attribute, which is the author's. */
  #own = {};
  #survey;
  #style;
  #place;
  #draft;
  #link = "";
  #near;
  #wanted = false;
  #asked = 0;

  constructor() {
    super();
    for (const kind of ["click", "input"]) {
      this.#root.addEventListener(kind, () => this.#survey && this.#grow());
    }
  }

  get name() {
    return this.getAttribute("name") ?? "";
  }
  get form() {
    return this.#internals.form;
  }
  /** The order's link; empty while something stands against sending it. */
  get value() {
    return this.#link;
  }
  get validity() {
    return this.#internals.validity;
  }
  get validationMessage() {
    return this.#internals.validationMessage;
  }
  checkValidity() {
    return this.#internals.checkValidity();
  }
  reportValidity() {
    return this.#internals.reportValidity();
  }

  connectedCallback() {
    // A property set before the class was known hides the class's own.
    for (const name of OWN) {
      if (Object.hasOwn(this, name)) {
        const value = this[name];
        delete this[name];
        this[name] = value;
      }
    }
    this.#validate();
    this.#wait();
    if (this.#wanted) return this.#show();
    this.#near = new AbortController();
    const { signal } = this.#near;
    for (const kind of ["pointerdown", "focusin", "keydown"]) {
      this.addEventListener(kind, () => this.#want(), { signal });
    }
    const eyes = new IntersectionObserver(
      (seen) => seen.some((one) => one.isIntersecting) && this.#want(),
      { rootMargin: "400px" },
    );
    eyes.observe(this);
    signal.addEventListener("abort", () => eyes.disconnect());
  }

  disconnectedCallback() {
    this.#near?.abort();
    this.#asked++;
    this.#draft = this.#survey?.leave() ?? this.#draft;
    this.#survey = undefined;
    this.#root.replaceChildren();
  }

  attributeChangedCallback(name) {
    if (name === "required") this.#validate();
    else if (!(name in this.#own)) this.#changed(name);
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
    this.#changed(name);
  }

  #changed(name) {
    if (!this.#survey) return;
    if (name === "profile") this.#again();
    else if (name === "theme") this.#theme();
    else this.#set(name);
  }

  #set(name) {
    const value = this.#get(name);
    if (name === "lang") this.#survey.setLanguage(this.#lang());
    else if (name === "unit" && value) this.#survey.setUnit(value);
    else if (name === "order" && value) this.#survey.open(value);
  }

  #theme() {
    const theme = this.#get("theme");
    this.#place.dataset.theme = theme === "light" || theme === "dark" ? theme : "auto";
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
    this.#root.adoptedStyleSheets = [base, reserved];
  }

  #lang() {
    return this.closest("[lang]")?.lang.slice(0, 2).toLowerCase() ?? "";
  }

  #word(index) {
    return (WORDS[this.#lang()] ?? WORDS.en)[index];
  }

  #grow() {
    this.#root.adoptedStyleSheets = [base, this.#style];
  }

  #want() {
    this.#near?.abort();
    this.#wanted = true;
    if (this.isConnected && !this.#survey) this.#show();
  }

  async #show() {
    const asked = ++this.#asked;
    const rules = this.#rules();
    let Survey;
    try {
      [Survey, this.#style] = await load(this.#root);
    } catch (error) {
      if (asked !== this.#asked) return;
      this.#wait(true);
      this.#emit("error", { code: "load", message: String(error?.message ?? error) });
      return;
    }
    const given = await rules;
    if (asked !== this.#asked || this.#survey) return;
    this.#place = make("div", { id: "app", part: "survey" });
    this.#theme();
    this.#root.replaceChildren(this.#place);
    this.#root.adoptedStyleSheets = [base, this.#style, reserved];
    const kept = this.hasAttribute("remember") ? `hangtrue-survey:${this.id}` : undefined;
    const told = (...news) => this.#tell(...news);
    this.#survey = new Survey(this.#place, PAGE.href, this.#draft, kept, told);
    this.#rule(...given);
    for (const name of ["unit", "order"]) this.#set(name);
    this.#emit("ready", { version: VERSION });
  }

  /** The dealer's rules as JSON and the page that has them too, or what kept them away. */
  async #rules() {
    const given = this.#get("profile");
    if (given == null || given === "") return [];
    try {
      return typeof given === "string" ? await this.#fetch(given) : [JSON.stringify(given)];
    } catch (error) {
      return [undefined, undefined, String(error.message)];
    }
  }

  /** Rules by them; whatever is wrong with them, the survey goes on by the built-in rules. */
  #rule(json, page, fault) {
    if (fault) this.#survey.ruleByDefault(fault);
    else fault = this.#survey.ruleBy(json, page ?? PAGE.href);
    if (fault) this.#emit("error", { code: "profile", message: fault });
  }

  async #fetch(address) {
    const url = new URL(address, document.baseURI);
    if (url.origin !== location.origin && url.origin !== WASM.origin) {
      throw new Error(`${address} is of another origin than this page and its script.`);
    }
    const response = await fetch(url, { credentials: "omit" });
    if (!response.ok) {
      throw new Error(`${address}: the server answers ${response.status}. Put the file there, or mend the address.`);
    }
    if (response.headers.get("content-length") > PROFILE_MOST) {
      throw new Error(`${address} is larger than ${PROFILE_MOST} bytes.`);
    }
    const same = url.origin === PAGE.origin;
    const page = new URL(same ? "dealer.html" : "", PAGE);
    if (same) page.searchParams.set("profile", url.pathname);
    return [await response.text(), page.href];
  }

  #tell(what, link, line, order) {
    this.#link = link ?? "";
    this.#internals.setFormValue(this.#link || null);
    this.#validate();
    this.#emit(what, { order: JSON.parse(order), link: link ?? null, line: line ?? null });
  }

  #validate() {
    const missing = this.hasAttribute("required") && !this.#link;
    const where = this.#place?.isConnected ? [this.#place] : [];
    this.#internals.setValidity({ valueMissing: missing }, missing ? this.#word(2) : "", ...where);
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
