// The survey in a frame: what the frame's address says becomes attributes, and the host
// page is told the height and what happens, if the address names its origin (`host`).
const query = new URLSearchParams(location.search);
const survey = document.querySelector("hangtrue-survey");
for (const name of ["profile", "lang", "unit", "order", "theme"]) {
  if (query.has(name)) survey.setAttribute(name, query.get(name));
}

const host = query.get("host");
if (host && parent !== self) {
  // The browser drops what is sent to another origin than the one that is named.
  const tell = (news) => parent.postMessage({ from: "hangtrue-survey", ...news }, host);
  const height = () => tell({ height: Math.ceil(survey.getBoundingClientRect().height) });
  new ResizeObserver(height).observe(survey);
  for (const event of ["ready", "change", "complete", "error"]) {
    survey.addEventListener(`hangtrue-${event}`, ({ detail }) => tell({ event, detail }));
  }
  // A host page that came to listen late asks.
  addEventListener("message", ({ origin, source, data }) => {
    if (origin === host && source === parent && data === "hangtrue-height") height();
  });
}
