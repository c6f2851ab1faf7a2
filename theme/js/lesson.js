/** The script of the screen pages, and the first that runs. */
import { showBlocksOnly } from "./blocks-only.js";
import { bringLater } from "./bring-later.js";
import { LessonThread } from "./lesson-thread.js";

showBlocksOnly(); // before anything is seen
LessonThread.define(); // before the stops' own scripts: they tell it what they remember
bringLater();
