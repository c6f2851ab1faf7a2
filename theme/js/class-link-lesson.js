/**
 * A lesson that links can be made to, as the page lists it.
 *
 * @typedef {object} Linkable
 * @property {string} id
 * @property {string} title
 * @property {HTMLAnchorElement[]} pages one for each language
 * @property {string} file what is fetched of it; empty where its stops stand here
 * @property {{ id: string, name: string }[]} stops
 */

/**
 * @param {HTMLElement} listed
 * @returns {Linkable}
 */
export function linkableOf(listed) {
  return {
    id: listed.dataset.lesson ?? "",
    title: listed.querySelector("b")?.textContent ?? "",
    pages: [...listed.querySelectorAll("a")],
    file: listed.dataset.file ?? "",
    stops: [...listed.querySelectorAll(/** @type {"li"} */ ("[data-stop]"))].map(({ dataset, textContent }) => ({ id: dataset.stop ?? "", name: textContent ?? "" })),
  };
}

/**
 * The stops of a lesson; none where they cannot be had, and then a link opens all of it.
 * @param {Linkable} lesson
 * @returns {Promise<Linkable["stops"]>}
 */
export async function stopsOf({ file, stops }) {
  if (!file) return stops;
  try {
    return (await (await fetch(file)).json()).stops;
  } catch {
    return [];
  }
}

/**
 * The address of a lesson's page: as this page knows it, or as it is published; empty where neither can be sent.
 * @param {HTMLAnchorElement} page
 */
export function addressOf(page) {
  return location.protocol.startsWith("http") ? page.href : (page.dataset.address ?? "");
}
