/**
 * An element whose listeners go when it leaves the page and come again when it returns. It looks
 * for its parts in `connected`, never before: whoever is made first has none yet.
 */
export class LiveElement extends HTMLElement {
  connectedCallback() {
    this.leaving = new AbortController();
    this.connected(this.leaving.signal);
  }

  disconnectedCallback() {
    this.leaving?.abort();
  }

  /**
   * Begins what the element does.
   * @param {AbortSignal} _signal for its listeners: given when the element leaves
   */
  connected(_signal) {}
}
