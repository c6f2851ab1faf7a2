/** What a lesson page with a video gets once it is shown: the pauses. */
import { PausePlayer } from "./pause-player.js";

PausePlayer.define();
