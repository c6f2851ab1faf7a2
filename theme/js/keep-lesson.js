import { button } from "./button.js";
import { LiveElement } from "./live-element.js";
import { bytesOf, canKeep, Kept, wholeList } from "./kept.js";
import { megabytes } from "./megabytes.js";
import { ownScript } from "./own-script.js";
import { say } from "./say.js";

/** Bytes that a kept lesson brings by itself to be as the site is; more is asked for, for a line may be metered. */
const BY_ITSELF = 2_000_000;

/**
 * Keeps this lesson on the device, for where there is no network: says how large it is, shows how
 * far it has come, brings a newer version, and takes everything away again.
 */
export class KeepLesson extends LiveElement {
  static define() {
    customElements.define("keep-lesson", this);
  }

  kept = new Kept(new URL(".", location.href));
  box = document.createElement("details");
  summary = document.createElement("summary");
  told = document.createElement("p");
  buttons = document.createElement("p");
  isWhole = false;

  /** @param {AbortSignal} signal */
  connected(signal) {
    if (!canKeep() || this.box.isConnected) return;
    this.told.setAttribute("role", "status");
    this.buttons.className = "buttons";
    this.box.append(this.summary, this.told, this.buttons);
    this.box.addEventListener("toggle", () => this.box.open && !this.buttons.hasChildNodes() && this.offer(), { signal });
    this.summary.textContent = say("keep");
    this.append(this.box);
    this.hidden = false;
    this.begin();
  }

  /** A kept lesson looks for a newer version by itself; any other asks the site for nothing. */
  async begin() {
    const here = await this.kept.list();
    if (!here) return;
    this.summary.textContent = say("keep_kept");
    await this.offer();
  }

  async offer() {
    const here = await this.kept.list();
    const list = await this.newest(here?.extra?.length === 0);
    if (here && (!list || list.version === here.version)) return this.showKept(here);
    if (!list) return this.show(say("keep_no_list"), this.again(say("keep_again"), () => this.offer()));
    const missing = bytesOf(await this.kept.missing(list));
    if (here && missing <= BY_ITSELF) return this.renew(list);
    const size = megabytes(missing);
    if (here) this.summary.textContent = say("keep_newer");
    const start = this.again(here ? say("keep_renew") : say("keep_it"), () => this.ask(list));
    this.show(here ? say("keep_is_newer", { size }) : say("keep_size", { size }), start, ...(here ? [this.removing()] : []));
  }

  /** @param {import("./kept.js").KeepList} here */
  showKept(here) {
    this.summary.textContent = say("keep_kept");
    const extra = bytesOf(here.extra ?? []);
    const more = this.again(say("keep_chart", { size: megabytes(extra) }), () => this.ask(wholeList(here)));
    this.show(say("keep_is_kept", { size: megabytes(bytesOf(here.files)) }), ...(extra ? [more] : []), this.removing());
  }

  /**
   * Brings a small newer version unasked. The page before the learner may still be the older one,
   * where the site's word came late: it is not taken away from under their hands.
   * @param {import("./kept.js").KeepList} list
   */
  async renew(list) {
    const isSeen = await this.kept.isPast();
    if (!(await this.store(list)) || isSeen) return;
    this.summary.textContent = say("keep_came");
    this.show(say("keep_came_says"), this.again(say("keep_show"), () => location.reload()), this.removing());
    this.box.open = true;
  }

  /**
   * Says whether all came.
   * @param {import("./kept.js").KeepList} list
   */
  async store(list) {
    const all = bytesOf(list.files);
    const bar = document.createElement("progress");
    bar.setAttribute("aria-label", say("keep_storing"));
    this.show(say("keep_storing"), bar);
    let come = 0;
    try {
      // Worker and page share one root: the worker may not answer above its own folder.
      await navigator.serviceWorker.register(ownScript(this.dataset.worker ?? ""));
      await this.kept.keep(list, (bytes) => (bar.value = Math.min((come += bytes) / all, 1)));
      this.showKept(list);
      return true;
    } catch (failed) {
      await this.fail(failed instanceof DOMException && failed.name === "QuotaExceededError");
      return false;
    }
  }

  /**
   * What has come of a broken attempt stays for the next one, unless there is no room for it.
   * @param {boolean} isFull
   */
  async fail(isFull) {
    if (isFull) await this.kept.dropUnfinished();
    this.show(isFull ? say("keep_full") : say("keep_failed"), this.again(say("keep_again"), () => this.tryAgain()));
  }

  /** With the list as it is by now: the site may have been published meanwhile. */
  async tryAgain() {
    const list = await this.newest(this.isWhole);
    if (list) await this.ask(list);
    else await this.offer();
  }

  /**
   * Brings a version that the learner asked for, and stays where they were.
   * @param {import("./kept.js").KeepList} list
   */
  async ask(list) {
    this.isWhole = list.extra?.length === 0;
    await this.store(list);
    this.summary.focus();
  }

  async remove() {
    await this.kept.remove();
    this.summary.textContent = say("keep");
    this.show(say("keep_removed"), this.again(say("keep_again"), () => this.offer()));
    this.summary.focus();
  }

  /**
   * The list as the site has it now, or nothing without a network.
   * @param {boolean} isWhole with what is large and can be done without
   */
  async newest(isWhole) {
    if (!navigator.onLine) return null;
    try {
      const answer = await fetch(this.dataset.keep ?? "", { cache: "reload" });
      if (!answer.ok) return null;
      const list = /** @type {import("./kept.js").KeepList} */ (await answer.json());
      return isWhole ? wholeList(list) : list;
    } catch {
      return null;
    }
  }

  /**
   * @param {string} text of the button
   * @param {() => void} then
   */
  again(text, then) {
    const made = button(text);
    made.addEventListener("click", then);
    return made;
  }

  removing() {
    return this.again(say("keep_remove"), () => this.remove());
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
