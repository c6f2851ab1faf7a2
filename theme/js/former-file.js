/** The script of the page in the place of a lost one, where lessons had other names: it finds their files. */
import { FormerFile } from "./former-file-element.js";

FormerFile.define();
