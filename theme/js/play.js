/** What only play needs: the pacer, the reading of wrong answers, practice. It comes when it is asked for. */
import { readAnswers } from "./answer-reader.js";
import { MovePacer } from "./move-pacer.js";
import { PracticeSet } from "./practice-set.js";

readAnswers(document);
MovePacer.define();
PracticeSet.define();
