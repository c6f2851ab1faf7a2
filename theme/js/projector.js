/** The script of the page for a projector, and the only file of its bundle that does anything by being loaded. */
import { showBlocksOnly } from "./blocks-only.js";
import { bringLater } from "./bring-later.js";
import { ProjectorView } from "./projector-view.js";
import { ShownTimer } from "./shown-timer.js";
import { MoveCard } from "../stops/move/element.js";

showBlocksOnly(); // before anything is seen
bringLater();
MoveCard.define();
ShownTimer.define();
ProjectorView.define();
