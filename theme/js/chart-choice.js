import { say } from "./say.js";

/** Which way of several to look at a chart. */
export class ChartChoice {
  element = document.createElement("fieldset");

  /** @param {string[]} names of the ways; the first is chosen */
  constructor(names) {
    const legend = document.createElement("legend");
    legend.textContent = say("chart_ask");
    const group = `chart-${document.querySelectorAll("[name^=chart-][value='0']").length}`;
    this.element.append(legend, ...names.map((name, at) => choiceOf(group, name, at)));
  }

  /** Place of the way that is chosen. */
  get chosen() {
    return [...this.element.querySelectorAll("input")].findIndex(({ checked }) => checked);
  }
}

/**
 * @param {string} group
 * @param {string} name
 * @param {number} at
 */
function choiceOf(group, name, at) {
  const input = document.createElement("input");
  input.type = "radio";
  input.name = group;
  input.value = String(at);
  input.checked = at === 0;
  const label = document.createElement("label");
  label.className = "choice";
  label.append(input, name);
  return label;
}
