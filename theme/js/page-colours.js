/**
 * A chart with the colours of the page in place of its own, as they are by now: light, dark, or
 * those of a device that asks for more contrast.
 * @param {string} text the chart as it was fetched
 * @param {Element} page an element that has the page's style
 * @returns {import("./gap-chart.js").Chart}
 */
export function pageColours(text, page) {
  const { colours } = JSON.parse(text);
  const style = getComputedStyle(page);
  return JSON.parse(text, (_, value) => (typeof value === "string" && style.getPropertyValue(colours[value] ?? "").trim()) || value);
}
