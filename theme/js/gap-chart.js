import { LiveElement } from "./live-element.js";
import { loadScript } from "./load-script.js";
import { say } from "./say.js";

/**
 * Draws the figure to explore, on request: nothing of it is loaded before. The table with its
 * numbers stays, whatever happens.
 */
export class GapChart extends LiveElement {
  static define() {
    customElements.define("gap-chart", this);
  }

  /** @param {AbortSignal} signal */
  connected(signal) {
    const button = this.querySelector("button");
    if (!button || location.protocol === "file:") return; // from a folder no data can be fetched
    const status = this.querySelector("[role=status]") ?? document.createElement("p");
    status.setAttribute("role", "status");
    button.after(status);
    button.hidden = false;
    const explore = async () => {
      status.textContent = say("chart_wait");
      try {
        await this.draw();
        status.textContent = "";
        button.hidden = true;
      } catch {
        status.textContent = say("chart_failed");
      }
    };
    button.addEventListener("click", explore, { signal });
  }

  async draw() {
    const { figure = "", library = "" } = this.dataset;
    const [{ data, layout }] = await Promise.all([fetch(figure).then((answer) => answer.json()), loadScript(library)]);
    const box = document.createElement("div");
    box.tabIndex = -1;
    box.setAttribute("role", "img");
    box.setAttribute("aria-label", this.querySelector("caption")?.textContent ?? "");
    this.prepend(box);
    // No bar of tools, so no way into a zoom that only those tools lead out of.
    await /** @type {any} */ (window).Plotly.newPlot(box, data, { ...layout, dragmode: false }, { responsive: true, displayModeBar: false });
    box.focus();
  }
}
