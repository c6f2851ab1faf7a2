import { CheckedAnswer } from "./checked-answer.js";
import { tellOf } from "./events.js";
import { LiveElement } from "./live-element.js";
import { readings } from "./read-tenths.js";
import { say } from "./say.js";
import { noteBefore } from "./tried.js";

/** Takes the answer to a question: one of its choices, or a number. */
export class AskedAnswer extends LiveElement {
  static define() {
    customElements.define("asked-answer", this);
  }

  /** @param {AbortSignal} signal */
  connected(signal) {
    const form = this.querySelector("form");
    if (form) (form.hasAttribute("data-before") ? new AskedBefore(form) : new Asked(form)).start(signal);
  }
}

class Asked extends CheckedAnswer {
  isRight() {
    return this.isTrue();
  }

  /** @returns {[string, boolean][]} */
  tries() {
    return this.written() ? [[`${this.form.id} answer`, this.isTrue()]] : [];
  }

  /** Whether what is chosen or written is the answer. */
  isTrue() {
    const right = this.form.dataset.answer;
    if (this.inputs[0]?.type === "radio") return this.written() === right;
    return readings(this.written(), document.documentElement.lang).includes(Number(right) * 10);
  }

  answer() {
    return this.form.closest("section")?.querySelector("[data-said]")?.textContent ?? "";
  }

  next() {
    if (!this.written()) return say("answer_empty");
    return this.inputs[0]?.type === "radio" ? say("choice_not_yet") : say("answer_not_yet");
  }

  /** What is chosen or written. */
  written() {
    return String(new FormData(this.form).get("answer") ?? "").trim();
  }
}

/** A question that is asked again later: what is answered is kept, and is neither right nor wrong yet. */
class AskedBefore extends Asked {
  isRight() {
    return false; // nobody is told
  }

  async check() {
    if (!this.written()) return this.show(say("answer_empty"));
    for (const [name, right] of this.tries()) noteBefore(this.store, name, right);
    this.show(say("asked_before_kept"));
    tellOf(this.form, "gap-found");
  }
}
