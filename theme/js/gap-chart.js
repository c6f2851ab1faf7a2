import { say } from "./words.js";

/**
 * Draws the figure to explore, on request: nothing of it is loaded before. The table with its
 * numbers stays, whatever happens.
 */
export class GapChart extends HTMLElement {
  static define() {
    customElements.define("gap-chart", this);
  }

  connectedCallback() {
    const button = this.querySelector("button");
    if (!button || location.protocol === "file:") return; // from a folder no data can be fetched
    const status = document.createElement("p");
    status.setAttribute("role", "status");
    button.after(status);
    button.hidden = false;
    button.addEventListener("click", async () => {
      status.textContent = say("chart_wait");
      try {
        await this.draw();
        status.textContent = "";
        button.hidden = true;
      } catch {
        status.textContent = say("chart_failed");
      }
    });
  }

  async draw() {
    const [figure] = await Promise.all([this.fetchFigure(), this.loadLibrary()]);
    const box = document.createElement("div");
    box.tabIndex = -1;
    box.setAttribute("role", "img");
    box.setAttribute("aria-label", this.querySelector("caption")?.textContent ?? "");
    this.prepend(box);
    try {
      await plotly().newPlot(box, figure.data, figure.layout, { responsive: true, displaylogo: false });
      box.focus();
    } catch (error) {
      box.remove();
      throw error;
    }
  }

  async fetchFigure() {
    const answer = await fetch(this.dataset.figure ?? "");
    if (!answer.ok) throw new Error(answer.statusText);
    return answer.json();
  }

  /** @returns {Promise<void>} */
  loadLibrary() {
    return new Promise((done, failed) => {
      if (plotly()) return done();
      const script = document.createElement("script");
      script.src = this.dataset.library ?? "";
      script.onload = () => done();
      script.onerror = failed;
      document.head.append(script);
    });
  }
}

/** The library, once its script has run. */
function plotly() {
  return /** @type {any} */ (window).Plotly;
}
