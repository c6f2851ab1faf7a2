import { classLinkHere, lessonHere } from "./class-link-here.js";
import { stopNamed } from "./stop-named.js";

/**
 * The stops that a class link in the address asks for, all of them without one or where it names none
 * that is there; and its text, which stays with the tab.
 * @param {Element} view
 * @param {Element[]} stops
 */
export function askedOfClass(view, stops) {
  const { text, link } = classLinkHere(lessonHere());
  if (typeof link === "string") return { stops, text: "" };
  if (link.blocksOnly) document.documentElement.toggleAttribute("data-blocks-only", true);
  const named = link.stops.map((name) => stopNamed(stops, name));
  const chosen = stops.filter((stop) => named.includes(stop));
  if (!chosen.length) return { stops, text };
  const ways = new Set(chosen.map(({ id }) => `#${id}`));
  for (const way of view.querySelectorAll("[data-bar] ol a")) way.closest("li")?.toggleAttribute("hidden", !ways.has(way.getAttribute("href") ?? ""));
  return { stops: chosen, text };
}
