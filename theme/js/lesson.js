/** The script of the screen pages, and the only file here that does anything by being loaded. */
import { bringLater } from "./bring-later.js";
import { GapCalculator } from "../stops/compare/element.js";
import { LessonThread } from "./lesson-thread.js";
import { MoveCard } from "../stops/move/element.js";

LessonThread.define(); // first: the others tell it what they remember
MoveCard.define(); // before the rows that tell it what was found already
GapCalculator.define();
bringLater();
