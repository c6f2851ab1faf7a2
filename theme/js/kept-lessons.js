import { button } from "./button.js";
import { tellOf } from "./events.js";
import { bytesOf, canKeep, everyKept } from "./kept.js";
import { megabytes } from "./megabytes.js";
import { say } from "./say.js";

/** Lists the lessons that are kept on this device, each with the way to it and a button that removes it. */
export class KeptLessons extends HTMLElement {
  static define() {
    customElements.define("kept-lessons", this);
  }

  async connectedCallback() {
    if (!canKeep()) return;
    const heading = document.createElement("h2");
    heading.tabIndex = -1;
    heading.textContent = say("kept_here");
    const list = document.createElement("ul");
    const root = new URL(this.dataset.root || ".", location.href);
    for (const [kept, { title, files }] of await everyKept(root)) list.append(this.line(kept, title, bytesOf(files)));
    this.hidden = !list.children.length;
    this.replaceChildren(heading, list);
  }

  /**
   * @param {import("./kept.js").Kept} kept
   * @param {string} title
   * @param {number} bytes
   */
  line(kept, title, bytes) {
    const line = document.createElement("li");
    const link = document.createElement("a");
    link.href = new URL("index.html", kept.folder).href;
    link.textContent = title;
    const remove = button(say("keep_remove"));
    remove.setAttribute("aria-label", say("kept_remove", { title }));
    remove.addEventListener("click", async () => {
      await kept.remove();
      line.remove();
      this.hidden = !this.querySelector("li");
      this.querySelector("h2")?.focus();
      tellOf(this, "kept-lesson-removed");
    });
    line.append(link, ` ${megabytes(bytes)} `, remove);
    return line;
  }
}
