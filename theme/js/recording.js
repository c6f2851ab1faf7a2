/** The one script of the pages for filming. */
import { FilmSlides } from "./recording/film-slides.js";
import { FilmTicks } from "./recording/film-ticks.js";
import { ScriptScroll } from "./recording/script-scroll.js";

FilmSlides.define();
ScriptScroll.define();
FilmTicks.define();
