/** What a lesson page gets at its first stop: the thread. It comes before the stops' own scripts: they tell it what they remember. */
import { LessonThread } from "./lesson-thread.js";

LessonThread.define();
