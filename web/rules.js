// A dealer's rules: what `startPage` takes of them, the file's text or what kept it away. A file
// of this page's origin, by its address from here.
const rulesOf = async (profile) => {
  try {
    const url = new URL(profile, location.href);
    if (url.origin !== location.origin) {
      throw new Error(`${profile} is of another origin than this page.`);
    }
    const response = await fetch(url, { credentials: "omit" });
    if (!response.ok) throw new Error(`${profile}: ${response.status}`);
    return [await response.text()];
  } catch (error) {
    return [undefined, error.message];
  }
};
