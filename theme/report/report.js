// Draws each chart above its table; what stands in the table is the same, and stays.
(() => {
  const text = document.getElementById("charts").textContent;
  const dark = matchMedia("(prefers-color-scheme: dark)");

  /** The figures in the colors of the page: a name of a property in them stands for its color. */
  const figures = () => {
    const style = getComputedStyle(document.documentElement);
    return JSON.parse(text, (_, value) =>
      typeof value === "string" && value.startsWith("--") ? style.getPropertyValue(value).trim() : value,
    );
  };

  const draw = () => {
    const drawn = figures();
    for (const box of document.querySelectorAll("[data-chart]")) {
      const { data, layout } = drawn[box.dataset.chart] ?? { data: [{ x: [] }] };
      if (!data[0].x.length) continue;
      box.hidden = false;
      if (box.clientWidth < 500) layout.xaxis.nticks = 3;
      layout.font.family = getComputedStyle(document.body).fontFamily;
      const options = { responsive: true, displayModeBar: false };
      Plotly.react(box, data, { ...layout, dragmode: false }, options);
      box.nextElementSibling.classList.add("charted");
    }
  };

  draw();
  dark.addEventListener("change", draw);
})();
