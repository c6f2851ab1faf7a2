/** What a lesson page gets at its first stop: the thread, and the way for what comes later. */
import { bringLater } from "./bring-later.js";
import { LessonThread } from "./lesson-thread.js";

LessonThread.define(); // before the stops' own scripts: they tell it what they remember
bringLater();
