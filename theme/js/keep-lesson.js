import { button } from "./button.js";
import { bytesOf, canKeep, Kept } from "./kept.js";
import { megabytes, tell } from "./tell.js";

/**
 * Keeps this lesson on the device, for where there is no network: says how large it is, shows how
 * far it has come, offers a newer version quietly, and takes everything away again.
 */
export class KeepLesson extends HTMLElement {
  static define() {
    customElements.define("keep-lesson", this);
  }

  kept = new Kept(new URL(".", location.href));
  box = document.createElement("details");
  summary = document.createElement("summary");
  told = document.createElement("p");
  buttons = document.createElement("p");

  connectedCallback() {
    if (!canKeep()) return;
    this.told.setAttribute("role", "status");
    this.buttons.className = "buttons";
    this.box.append(this.summary, this.told, this.buttons);
    this.box.addEventListener("toggle", () => this.box.open && !this.buttons.hasChildNodes() && this.offer());
    this.summary.textContent = tell("keep");
    this.append(this.box);
    this.hidden = false;
    this.begin();
  }

  /** A kept lesson looks for a newer version by itself; any other asks the site for nothing. */
  async begin() {
    const here = await this.kept.list();
    if (!here) return;
    this.summary.textContent = tell("keep_kept");
    await this.offer();
  }

  async offer() {
    const here = await this.kept.list();
    const list = await this.newest();
    if (here && (!list || list.version === here.version)) this.show(tell("keep_is_kept", { size: megabytes(bytesOf(here.files)) }), this.removing());
    else if (!list) this.show(tell("keep_no_list"), this.again("keep_again", () => this.offer()));
    else {
      const size = megabytes(bytesOf(await this.kept.missing(list)));
      if (here) this.summary.textContent = tell("keep_newer");
      const start = this.again(here ? "keep_renew" : "keep_it", () => this.store(list));
      this.show(tell(here ? "keep_is_newer" : "keep_size", { size }), start, ...(here ? [this.removing()] : []));
    }
  }

  /** @param {import("./kept.js").KeepList} list */
  async store(list) {
    const all = bytesOf(list.files);
    const bar = document.createElement("progress");
    bar.setAttribute("aria-label", tell("keep_storing"));
    this.show(tell("keep_storing"), bar);
    let come = 0;
    try {
      // Worker and page share one root: the worker may not answer above its own folder.
      await navigator.serviceWorker.register(this.dataset.worker ?? "");
      await this.kept.keep(list, (bytes) => (bar.value = Math.min((come += bytes) / all, 1)));
      this.summary.textContent = tell("keep_kept");
      await this.offer();
    } catch (failed) {
      await this.fail(list, failed instanceof DOMException && failed.name === "QuotaExceededError");
    }
    this.summary.focus();
  }

  /**
   * What has come of a broken attempt stays for the next one, unless there is no room for it.
   * @param {import("./kept.js").KeepList} list
   * @param {boolean} isFull
   */
  async fail(list, isFull) {
    if (isFull) await this.kept.dropUnfinished();
    this.show(tell(isFull ? "keep_full" : "keep_failed"), this.again("keep_again", () => this.store(list)));
  }

  async remove() {
    await this.kept.remove();
    this.summary.textContent = tell("keep");
    this.show(tell("keep_removed"), this.again("keep_again", () => this.offer()));
    this.summary.focus();
  }

  /** The list as the site has it now, or nothing without a network. */
  async newest() {
    if (!navigator.onLine) return null;
    try {
      const answer = await fetch(this.dataset.keep ?? "", { cache: "reload" });
      return answer.ok ? /** @type {import("./kept.js").KeepList} */ (await answer.json()) : null;
    } catch {
      return null;
    }
  }

  /**
   * @param {string} key of the button's text
   * @param {() => void} then
   */
  again(key, then) {
    const made = button(tell(key));
    made.addEventListener("click", then);
    return made;
  }

  removing() {
    return this.again("keep_remove", () => this.remove());
  }

  /**
   * @param {string} text
   * @param {Node[]} below
   */
  show(text, ...below) {
    this.told.textContent = text;
    this.buttons.replaceChildren(...below);
  }
}
