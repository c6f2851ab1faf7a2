/** What a lesson page with a video gets once it is shown: the pauses. */
import { FilmChoice } from "./film-choice.js";
import { PausePlayer } from "./pause-player.js";

FilmChoice.define();
PausePlayer.define();
