import { ChartChoice } from "./chart-choice.js";
import { LiveElement } from "./live-element.js";
import { loadScript } from "./load-script.js";
import { pageColours } from "./page-colours.js";
import { say } from "./say.js";

/**
 * Draws the chart to explore, on request: nothing of it is loaded before. The table with its
 * numbers stays, whatever happens.
 *
 * @typedef {object} Way one way to look at the bars
 * @property {string} name
 * @property {string} says what it shows
 * @property {object[]} data traces of plotly.js
 * @property {Record<string, any>} layout
 *
 * @typedef {object} Chart
 * @property {Record<string, string>} colours the page's own property for each colour of it
 * @property {Way[]} ways
 */
export class GapChart extends LiveElement {
  static define() {
    customElements.define("gap-chart", this);
  }

  dark = matchMedia("(prefers-color-scheme: dark)");
  told = document.createElement("p");
  box = document.createElement("div");

  /** @param {AbortSignal} signal */
  connected(signal) {
    const button = this.querySelector("button");
    if (!button || location.protocol === "file:") return; // from a folder no data can be fetched
    this.told.setAttribute("role", "status");
    button.after(this.told);
    button.hidden = false;
    const explore = async () => {
      this.told.textContent = say("chart_wait");
      try {
        await this.explore(signal);
        button.hidden = true;
      } catch {
        this.told.textContent = say("chart_failed");
      }
    };
    button.addEventListener("click", explore, { signal });
  }

  /** @param {AbortSignal} signal */
  async explore(signal) {
    const { figure = "", library = "" } = this.dataset;
    const [chart] = await Promise.all([fetch(figure).then((answer) => answer.text()), loadScript(library)]);
    const { ways } = /** @type {Chart} */ (JSON.parse(chart));
    const choice = new ChartChoice(ways.map(({ name }) => name));
    this.box.tabIndex = -1;
    this.box.setAttribute("role", "img");
    this.prepend(choice.element, this.told, this.box);
    choice.element.hidden = ways.length < 2;
    const draw = () => this.draw(pageColours(chart, this), choice.chosen);
    choice.element.addEventListener("change", draw, { signal });
    this.dark.addEventListener("change", draw, { signal });
    await draw();
    this.box.focus();
  }

  /**
   * @param {Chart} chart in the colours of the page
   * @param {number} chosen place of a way
   */
  async draw({ ways }, chosen) {
    const { name, says, data, layout } = ways[chosen];
    const { fontFamily } = getComputedStyle(this);
    this.told.textContent = says;
    this.box.setAttribute("aria-label", [this.querySelector("caption")?.textContent, name].filter(Boolean).join(". "));
    const font = { ...layout.font, family: fontFamily };
    // No zoom by dragging: nothing would lead out of it.
    await /** @type {any} */ (window).Plotly.react(this.box, data, { ...layout, font, dragmode: false }, { responsive: true, displayModeBar: false });
  }
}
