import { classLinkHere, isClassLinkNamed, lessonHere } from "./class-link-here.js";
import { carryClassLink } from "./class-ways.js";

/** A sheet as a class link asks for it: with blocks alone, and in large print. */
export function printForClass() {
  const { text, link } = classLinkHere(lessonHere());
  if (typeof link === "string") return;
  carryClassLink(text, link);
  if (link.blocksOnly) document.documentElement.toggleAttribute("data-blocks-only", true);
  if (link.largePrint && isClassLinkNamed()) location.replace("#large-print");
}
