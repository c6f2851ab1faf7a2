/** What a lesson page with a day in it gets once it is shown: the learner's decision. */
import { DayBalance } from "./day-balance.js";

DayBalance.define();
