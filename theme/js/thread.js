/** What a lesson page gets at its first stop: the thread, and the way for what comes later. */
import { bringLater } from "./bring-later.js";
import { followClassLink } from "./class-view.js";
import { LessonThread } from "./lesson-thread.js";

for (const thread of document.querySelectorAll(/** @type {"div"} */ ("lesson-thread"))) followClassLink(thread); // before anybody asks which stops there are
LessonThread.define(); // before the stops' own scripts: they tell it what they remember
bringLater();
