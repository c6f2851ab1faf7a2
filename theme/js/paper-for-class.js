import { classLinkHere, lessonHere } from "./class-link-here.js";

/** A sheet as a class link asks for it: with blocks alone, and in large print. */
export function printForClass() {
  const { link } = classLinkHere(lessonHere());
  if (typeof link === "string") return;
  if (link.blocksOnly) document.documentElement.toggleAttribute("data-blocks-only", true);
  if (link.largePrint && location.hash.startsWith("#for-class")) location.replace("#large-print");
}
