/** What a lesson page with a day in it gets once it is shown: the learner's decision. */
import { DayBalance } from "../stops/day/element.js";

DayBalance.define();
