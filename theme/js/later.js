/** What a lesson page gets once it is shown, and the only file of its bundle that does anything by being loaded. */
import { AskedAnswer } from "./asked-answer.js";
import { BlocksSwitch } from "./blocks-switch.js";
import { CaptionChoices } from "./caption-choices.js";
import { EstimateLine } from "./estimate-line.js";
import { FinishCode } from "./finish-code.js";
import { GapChart } from "./gap-chart.js";
import { HangingGaps } from "./hanging-gaps.js";
import { KeepLesson } from "./keep-lesson.js";
import { LessonEnding } from "./lesson-ending.js";
import { loadStyle } from "./load-style.js";
import { NumberLine } from "./number-line.js";
import { ReadAloud } from "./read-aloud.js";
import { VideoTranscript } from "./video-transcript.js";
import { WhoIsHere } from "./who-is-here.js";

AskedAnswer.define();
EstimateLine.define();
GapChart.define();
NumberLine.define();
HangingGaps.define();
LessonEnding.define();
FinishCode.define(); // after the ending: it stands below it
loadStyle("later.css").then(() => {
  WhoIsHere.define();
  BlocksSwitch.define();
  ReadAloud.define();
  KeepLesson.define();
  CaptionChoices.define();
  VideoTranscript.define();
});
