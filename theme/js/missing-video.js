const PATIENCE = 8_000; // ms until a video that should play and does not is said to be missing

/**
 * Tells when a video cannot be had: there is no file, the browser cannot play it, or the line is
 * too slow for it; and when it plays after all.
 * @param {HTMLVideoElement} video
 * @param {(isMissing: boolean) => void} tell
 * @param {AbortSignal} signal
 */
export function watchForLoss(video, tell, signal) {
  let patience = 0;
  const wait = () => {
    clearTimeout(patience);
    patience = window.setTimeout(() => !video.paused && video.readyState < video.HAVE_FUTURE_DATA && tell(true), PATIENCE);
  };
  for (const happened of ["play", "waiting"]) video.addEventListener(happened, wait, { signal });
  video.addEventListener("playing", () => tell(false), { signal });
  video.addEventListener("error", () => tell(true), { signal });
  signal.addEventListener("abort", () => clearTimeout(patience));
  if (!video.paused) wait(); // it was started before this script came
  if (video.error) tell(true); // or it failed before
}
