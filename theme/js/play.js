/** What only play needs: the pacer, the reading of wrong answers, practice. It comes when it is asked for. */
import { notYet } from "./answer-reader.js";
import { bringLater } from "./bring-later.js";
import { MovePacer } from "./move-pacer.js";
import { playIsHere } from "./play-loader.js";
import { PracticeSet } from "./practice-set.js";

MovePacer.define();
bringLater();
PracticeSet.define();
playIsHere({ notYet });
