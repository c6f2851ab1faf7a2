// Draws each chart above its table; what stands in the table is the same, and stays.
(() => {
  /**
   * @typedef {object} Layout what is changed of it here; the rest is handed on
   * @property {{ nticks?: number }} xaxis
   * @property {{ family?: string }} font
   *
   * @typedef {object} Figure
   * @property {{ x: unknown[] }[]} data
   * @property {Layout} layout
   *
   * @typedef {object} Library
   * @property {(box: HTMLElement, data: Figure["data"], layout: object, options: object) => void} react
   */

  const text = document.getElementById("charts")?.textContent ?? "{}";
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const { Plotly } = /** @type {typeof window & { Plotly: Library }} */ (window);

  /**
   * The figures in the colors of the page: a name of a property in them stands for its color.
   * @returns {Record<string, Figure>}
   */
  const figures = () => {
    const style = getComputedStyle(document.documentElement);
    return JSON.parse(text, (_, value) =>
      typeof value === "string" && value.startsWith("--") ? style.getPropertyValue(value).trim() : value,
    );
  };

  const draw = () => {
    const drawn = figures();
    for (const box of document.querySelectorAll(/** @type {"div"} */ ("[data-chart]"))) {
      const figure = drawn[box.dataset.chart ?? ""];
      if (!figure?.data[0]?.x.length) continue;
      const { data, layout } = figure;
      box.hidden = false;
      if (box.clientWidth < 500) layout.xaxis.nticks = 3;
      layout.font.family = getComputedStyle(document.body).fontFamily;
      const options = { responsive: true, displayModeBar: false };
      Plotly.react(box, data, { ...layout, dragmode: false }, options);
      box.nextElementSibling?.classList.add("charted");
    }
  };

  draw();
  dark.addEventListener("change", draw);
})();
