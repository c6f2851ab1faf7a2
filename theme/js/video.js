/** What stands around the video; it comes when the page is there, so that the page comes sooner. */
import { CaptionChoices } from "./caption-choices.js";
import { VideoTranscript } from "./video-transcript.js";

CaptionChoices.define();
VideoTranscript.define();
