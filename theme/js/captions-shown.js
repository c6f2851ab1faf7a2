import { Store } from "./store.js";

/**
 * Captions are shown from the start, also by browsers that leave them off, until somebody switches
 * them off: that is kept, for all lessons on this device.
 * @param {HTMLVideoElement} video
 * @param {AbortSignal} signal
 */
export function showCaptions(video, signal) {
  const store = new Store("captions");
  const tracks = [...video.querySelectorAll("track")].filter(({ kind }) => kind === "captions");
  const areShown = () => tracks.some(({ track }) => track.mode === "showing");
  const first = tracks.find((each) => each.default)?.track;
  if (!first) return;
  if (store.get("shown") === "no") for (const { track } of tracks) track.mode = "disabled";
  else if (!areShown()) first.mode = "showing";
  let were = areShown();
  const changed = () => {
    if (areShown() === were) return;
    were = areShown();
    store.set("shown", were ? "yes" : "no");
  };
  video.textTracks.addEventListener("change", changed, { signal });
}
