const FADING = 3_000; // ms for a browser to give the page back; some fade out for a second

/**
 * Leaves the full screen that a video fills, not that of a whole page, and waits until the page has its place back: before
 * that, whatever is scrolled to or focused is lost again. Nothing to wait for where there is none.
 * @param {HTMLVideoElement} video
 */
export async function leaveFullScreen(video) {
  const own = /** @type {any} */ (video); // phones that know a full screen for videos only
  const { documentElement, fullscreenElement } = document;
  if (fullscreenElement && fullscreenElement !== documentElement) await left(document, "fullscreenchange", () => document.exitFullscreen());
  else if (own.webkitDisplayingFullscreen) await left(video, "webkitendfullscreen", () => own.webkitExitFullscreen());
  else return;
  await layOut();
}

/**
 * @param {EventTarget} where
 * @param {string} happened tells that it has been left
 * @param {() => Promise<void> | void} leave
 */
async function left(where, happened, leave) {
  const waiting = new AbortController();
  const gone = new Promise((go) => {
    where.addEventListener(happened, go, { once: true, signal: waiting.signal });
    setTimeout(go, FADING);
  });
  try {
    await leave();
    await gone;
  } catch {
    // somebody else left it at the same moment
  }
  waiting.abort();
}

/** Until the page stands in its own width: two pictures, or a moment where none is drawn. */
function layOut() {
  return new Promise((go) => {
    requestAnimationFrame(() => requestAnimationFrame(go));
    setTimeout(go, 250);
  });
}
