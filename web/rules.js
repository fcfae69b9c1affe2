// A dealer's rules: what `startPage` takes of them, the file's text or what kept it away. A file
// of this page's origin, by its address from here.
const rulesOf = async (profile) => {
  try {
    const url = new URL(profile, location.href);
    if (url.origin !== location.origin) {
      throw new Error(`${profile} is of another origin than this page.`);
    }
    const response = await fetch(url, { credentials: "omit" });
    if (!response.ok) {
      throw new Error(`${profile}: the server answers ${response.status}. Put the file there, or mend the address.`);
    }
    return [await response.text()];
  } catch (error) {
    return [undefined, error.message];
  }
};

// On the first visit some of what a page by a dealer's rules needs has come before the worker
// answered for it: what the worker has not seen go by is asked for once more, for it to keep beside
// the build.
const kept = (files) => {
  const keep = async () => {
    for (const file of files) {
      if (!(await caches.match(file))) await fetch(file, { credentials: "omit" });
    }
  };
  const keepOrNot = () => keep().catch(() => undefined);
  if (navigator.serviceWorker?.controller) keepOrNot();
  else navigator.serviceWorker?.addEventListener("controllerchange", keepOrNot, { once: true });
};
