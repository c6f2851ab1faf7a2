/**
 * Leads to where a file of a lesson is that was asked for under an older name of the lesson: a sheet
 * as a PDF, a copy to take home. It shows itself where such a file is there.
 */
export class FormerFile extends HTMLElement {
  static define() {
    customElements.define("former-file", this);
  }

  async connectedCallback() {
    const list = new URL(this.dataset.names ?? "", location.href);
    const way = this.querySelector("a");
    try {
      const names = await (await fetch(list)).json();
      const address = todayOf(location.href, new URL("..", list).href, names);
      if (!way || !address || !(await fetch(address, { method: "HEAD" })).ok) return;
      way.href = address;
      this.hidden = false;
    } catch {
      // no network: the page says as much as it did
    }
  }
}

/**
 * The address of a file today; nothing where no lesson of such an older name is known. What a file is
 * called may begin with the lesson's name.
 * @param {string} asked
 * @param {string} root of the site
 * @param {Record<string, string>} names folders of today by those of before
 */
function todayOf(asked, root, names) {
  const path = asked.startsWith(root) ? asked.slice(root.length) : "";
  const [before, now] = Object.entries(names).find(([folder]) => path.startsWith(folder)) ?? [];
  if (!before || !now) return "";
  const [old, today] = [before, now].map((folder) => folder.split("/").at(-2) ?? "");
  return root + now + path.slice(before.length).replace(old ?? "", today ?? "");
}
