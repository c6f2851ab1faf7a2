/** The script of the page that other sites show inside of theirs. What each kind of stop needs comes with the stop. */
import { AskedAnswer } from "./asked-answer.js";
import { EstimateLine } from "./estimate-line.js";
import { HangingGaps } from "./hanging-gaps.js";
import { checkInFrame, keepNothing, leaveStill, markFound, stayInFrame } from "./in-frame.js";
import { NumberLine } from "./number-line.js";

keepNothing(); // before anything asks what was kept
checkInFrame();
markFound();
leaveStill("lesson-thread", "gap-chart");
stayInFrame();
AskedAnswer.define();
EstimateLine.define();
NumberLine.define();
HangingGaps.define();
