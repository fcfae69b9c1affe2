// For a page with the survey in a frame: every frame with `data-hangtrue` gets the height
// that the survey in it tells. A message counts only from that frame and its own origin.
const LEAST = 200;
const MOST = 20000;

for (const frame of document.querySelectorAll("iframe[data-hangtrue]")) {
  const { origin } = new URL(frame.src);
  addEventListener("message", (event) => {
    const { from, height } = event.data ?? {};
    if (event.origin !== origin || event.source !== frame.contentWindow) return;
    if (from !== "hangtrue-survey" || !Number.isFinite(height)) return;
    frame.height = Math.min(Math.max(height, LEAST), MOST);
  });
  // For a survey that told its height before anybody listened. It is no secret: one that is
  // not there yet, or another page in its place, learns nothing.
  frame.contentWindow?.postMessage("hangtrue-height", "*");
}
