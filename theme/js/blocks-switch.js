import { BLOCKS_ONLY, isBlocksOnly, showBlocksOnly } from "./blocks-only.js";
import { button } from "./button.js";
import { say } from "./say.js";
import { Store } from "./store.js";

/**
 * One switch for a family that needs fewer numbers about food. Nobody is asked why, and nothing
 * on the page tells that it is on but the switch itself. Where a class link asks for it, there is
 * nothing to switch.
 */
export class BlocksSwitch {
  static define() {
    const care = document.querySelector(":root:not([data-class-blocks]) lesson-thread:has(gap-calculator, day-balance) [data-care]");
    if (care) new BlocksSwitch().start(care);
  }

  told = document.createElement("p");
  pressed = button();

  /** @param {Element} care the box at the top that speaks of it; closed, so that nothing below moves */
  start(care) {
    this.told.className = "quiet";
    this.told.setAttribute("role", "status");
    this.pressed.textContent = say("blocks_only");
    this.pressed.addEventListener("click", () => {
      new Store("device").set(BLOCKS_ONLY, isBlocksOnly() ? "" : "yes");
      showBlocksOnly();
      this.show();
    });
    care.append(this.pressed, this.told);
    this.show();
  }

  show() {
    const on = isBlocksOnly();
    this.pressed.setAttribute("aria-pressed", String(on));
    this.told.textContent = on ? say("blocks_only_says") : "";
  }
}
