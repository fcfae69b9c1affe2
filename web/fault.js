// What a person sees where the module does not start, or has stopped (a trap): then it cannot be
// asked, so these lines say it. Text nodes only: the policy lets nothing parse markup.
const FAULTS = {
  en: [
    "The page could not start",
    "It measures with WebAssembly. That is blocked here, or did not arrive whole. Load the page again. If that does not help, open it in another browser.",
    "The page has stopped",
    "A fault in the page, nothing that you did.",
    "What you typed is kept on this device. Load the page again to go on. If it stops there again, begin anew: the old draft stays in the list.",
    "Load again",
    "Begin anew",
  ],
  es: [
    "La página no pudo empezar",
    "Mide con WebAssembly. Aquí está bloqueado, o no llegó entero. Cargue la página otra vez. Si no ayuda, ábrala en otro navegador.",
    "La página se detuvo",
    "Es una falla de la página, no de lo que usted hizo.",
    "Lo que escribió queda guardado en este aparato. Cargue la página otra vez para seguir. Si se detiene de nuevo, empiece de cero: el borrador anterior sigue en la lista.",
    "Cargar otra vez",
    "Empezar de cero",
  ],
  fr: [
    "La page n’a pas pu démarrer",
    "Elle mesure avec WebAssembly. Il est bloqué ici, ou n’est pas arrivé entier. Rechargez la page. Si cela n’aide pas, ouvrez-la dans un autre navigateur.",
    "La page s’est arrêtée",
    "C’est un défaut de la page, pas de ce que vous avez fait.",
    "Ce que vous avez écrit est gardé sur cet appareil. Rechargez la page pour continuer. Si elle s’arrête encore, recommencez à neuf : l’ancien brouillon reste dans la liste.",
    "Recharger",
    "Recommencer à neuf",
  ],
};
const MARK = "hangtrue-here";
/** The one draft of a page that has one (hang.html). */
const OWN = document.getElementById("app").dataset.draft;
/** A trap, or the stack's end as each engine names it. */
const isStop = (error) => /^(Runtime|Range|Internal)Error$/.test(error?.name);

/** Leaves the draft alone, in the list. */
const setAside = () => {
  if (!OWN) {
    // Names no draft: see drafts.rs.
    sessionStorage.setItem(MARK, "");
  } else if (OWN in localStorage) {
    // Under the first number that is free: see hang.rs.
    let number = 1;
    while (`${OWN}-${number}` in localStorage) number += 1;
    localStorage.setItem(`${OWN}-${number}`, localStorage.getItem(OWN));
    localStorage.removeItem(OWN);
  }
};

/** Whether this tab's draft stands in the storage; storage itself may be refused. */
const isKept = () => {
  try {
    return (OWN ?? `hangtrue-draft-${sessionStorage.getItem(MARK)}`) in localStorage;
  } catch {
    return false;
  }
};

let isTold = false;
const fault = (error) => {
  if (isTold) return;
  isTold = true;
  const page = document.getElementById("app");
  const hasStopped = isStop(error);
  const language = "ready" in page.dataset ? document.documentElement.lang : navigator.language;
  const key = language.slice(0, 2);
  const lang = key in FAULTS ? key : "en";
  const [unstarted, why, stopped, whose, kept, again, anew] = FAULTS[lang];
  const make = (name, textContent, more) =>
    Object.assign(document.createElement(name), { textContent, ...more });
  const main = make("main", "", { id: "fault", lang });
  const heading = make("h1", hasStopped ? stopped : unstarted, { tabIndex: -1 });
  main.append(heading, make("p", hasStopped ? whose : why, { className: "lede" }));
  if (hasStopped && isKept()) main.append(make("p", kept, { className: "lede" }));
  const load = { className: "primary", onclick: () => location.reload() };
  const begin = () => {
    try {
      setAside();
    } catch {
      // Without storage there is no draft to come back to.
    }
    location.href = location.pathname + location.search;
  };
  main.append(make("button", again, load));
  if (hasStopped) main.append(make("button", anew, { className: "quiet", onclick: begin }));
  // Another element: what the module hears is bound to the one that goes.
  page.replaceWith(make("div", "", { id: "app" }));
  document.getElementById("app").append(make("header", "Hangtrue", { className: "top" }), main);
  heading.focus();
};
const onFault = ({ error, reason = error }) => {
  if (isStop(reason)) fault(reason);
};
addEventListener("error", onFault);
addEventListener("unhandledrejection", onFault);

/** Whoever leaves the page ends its loading: that is no fault, and nobody is there to be told. */
let isLeaving = false;
addEventListener("beforeunload", () => (isLeaving = true));

/** What a module's start gives; where it does not start that is said, and nothing follows. */
const begun = (start) =>
  start.catch((error) => {
    const tell = () => {
      if (isLeaving) return;
      console.error(error);
      fault(error);
    };
    setTimeout(tell, 500);
    return new Promise(() => {});
  });

