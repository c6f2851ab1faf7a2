/** The script of the screen pages, and the first that runs. */
import { bringLater } from "./bring-later.js";
import { LessonThread } from "./lesson-thread.js";

LessonThread.define(); // before the stops' own scripts: they tell it what they remember
bringLater();
