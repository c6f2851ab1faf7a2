import { hear } from "./events.js";

/** ms */
const KEPT_EVERY = 20_000;

/**
 * Keeps how many seconds a lesson's page was in sight, beside what is kept of the lesson anyway, and
 * never when. As long as nothing is written or done, nothing is kept.
 * @param {import("./store.js").Store} store
 */
export function keepTimeInSight(store) {
  let [seconds, since] = [0, performance.now()];
  const keep = () => {
    const now = performance.now();
    if (!document.hidden) seconds += (now - since) / 1000;
    since = now;
    if (seconds < 1 || !Object.keys(store.all()).length) return;
    store.set("seen", String(secondsSeen(store) + Math.floor(seconds)));
    seconds %= 1;
  };
  document.addEventListener("visibilitychange", () => {
    if (!document.hidden) since = performance.now(); // what lies between was out of sight
    else {
      seconds += (performance.now() - since) / 1000;
      keep();
    }
  });
  addEventListener("pagehide", keep);
  setInterval(keep, KEPT_EVERY);
  hear(document, "lesson-cleared", () => ([seconds, since] = [0, performance.now()]), new AbortController().signal);
  return keep;
}

/** @param {import("./store.js").Store} store */
export function secondsSeen(store) {
  return Number(store.get("seen")) || 0;
}
