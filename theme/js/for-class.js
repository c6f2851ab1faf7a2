/** The script that makes class links, and the only file of its bundle that does anything by being loaded. */
import { ClassLinkMaker } from "./class-link-maker.js";

ClassLinkMaker.define();
