/** The script of the screen pages, and the only file here that does anything by being loaded. */
import { bringLater } from "./bring-later.js";
import { DayBalance } from "./day-balance.js";
import { GapCalculator } from "./gap-calculator.js";
import { GapChart } from "./gap-chart.js";
import { LessonThread } from "./lesson-thread.js";
import { PausePlayer } from "./pause-player.js";

LessonThread.define(); // first: the others tell it what they remember
GapCalculator.define();
DayBalance.define();
PausePlayer.define();
GapChart.define();
bringLater();
