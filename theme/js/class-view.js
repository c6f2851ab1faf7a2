import { showBlocksOnly } from "./blocks-only.js";
import { holdBack } from "./class-answers.js";
import { classLinkHere } from "./class-link-here.js";
import { leaveOthersOut } from "./class-stops.js";
import { carryClassLink } from "./class-ways.js";
import { make } from "./make.js";
import { keys } from "./keys.js";
import { say } from "./say.js";

const WHEN = keys({ try: "class_answers_try", later: "class_answers_later" });

/**
 * Shows a lesson as the class link in its address asks for, and says so in one line; without one,
 * or with one that cannot be read, the whole lesson is there. Nothing of it is kept on the device.
 * @param {HTMLElement} thread
 */
export function followClassLink(thread) {
  const { text, link } = classLinkHere(thread.dataset.lesson ?? "");
  if (typeof link === "string") showBlocksOnly(); // as the device has it, whatever the fragment seemed to ask for
  if (link === "no_link") return;
  if (link === "spoiled") return tell(thread, say("class_spoiled"));
  const chosen = leaveOthersOut(thread, link.stops);
  const page = document.documentElement;
  if (link.blocksOnly) page.setAttribute("data-class-blocks", "");
  page.toggleAttribute("data-blocks-only", page.matches("[data-blocks-only], [data-class-blocks]"));
  page.toggleAttribute("data-large-print", link.largePrint);
  if (link.answers !== "once") holdBack(thread, link.answers);
  carryClassLink(text, link);
  tell(thread, ...wordsOf(link, chosen), wholeLesson());
}

/**
 * @param {import("./class-link.js").ClassLink} link
 * @param {import("./class-stops.js").Chosen} chosen
 */
function wordsOf({ stops, answers }, { some, all, gone }) {
  const shown = some < all ? say("class_some", { some, all }) : say("class_all", { all });
  const lost = gone && (gone === stops.length ? say("class_all_gone") : say("class_gone", { n: gone }));
  const key = WHEN[/** @type {keyof typeof WHEN} */ (answers)];
  return [shown, lost, key && say(key)].filter((words) => typeof words === "string");
}

/** The way to the lesson without the link's choices. */
function wholeLesson() {
  const [href = ""] = location.href.split("#");
  return make("a", { href, textContent: say("class_whole") });
}

/**
 * @param {HTMLElement} thread
 * @param {(string | Node)[]} told
 */
function tell(thread, ...told) {
  const line = make("p", { className: "band" }, make("span", {}, ...told.flatMap((one) => [one, " "])));
  line.dataset.forClass = "";
  thread.querySelector("h1")?.after(line);
}
