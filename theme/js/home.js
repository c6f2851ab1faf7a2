/** The script of the front page, and the only file of its bundle that does anything by being loaded. */
import { bringLater } from "./bring-later.js";
import { KeptLessons } from "./kept-lessons.js";
import { LessonFilter } from "./lesson-filter.js";
import { markLessons } from "./lesson-marks.js";

LessonFilter.define();
bringLater();
KeptLessons.define();
markLessons();
addEventListener("pageshow", ({ persisted }) => persisted && markLessons()); // back from a lesson that was just begun
addEventListener("kept-lesson-removed", () => markLessons());
