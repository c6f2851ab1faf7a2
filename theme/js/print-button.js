/** Opens the browser's print window; without JavaScript it stays hidden and the browser's own menu prints. */
export class PrintButton extends HTMLElement {
  static define() {
    customElements.define("print-button", this);
  }

  connectedCallback() {
    this.hidden = false;
    this.querySelector("button")?.addEventListener("click", () => print());
  }
}
