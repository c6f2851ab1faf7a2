/** The script of the screen pages, and the only file here that does anything by being loaded. */
import { bringLater } from "./bring-later.js";
import { DayBalance } from "./day-balance.js";
import { GapCalculator } from "./gap-calculator.js";
import { GapChart } from "./gap-chart.js";
import { LessonThread } from "./lesson-thread.js";
import { MoveCard } from "./move-card.js";
import { NumberLine } from "./number-line.js";
import { PausePlayer } from "./pause-player.js";

LessonThread.define(); // first: the others tell it what they remember
MoveCard.define(); // before the rows that tell it what was found already
GapCalculator.define();
NumberLine.define();
DayBalance.define();
PausePlayer.define();
GapChart.define();
bringLater();
