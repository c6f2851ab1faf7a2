/** Names that the folder of this page's lesson had before, from the page itself; none on most pages. */
export function formerNames() {
  return (document.documentElement.dataset.formerly ?? "").split(" ").filter(Boolean);
}
