/** The one script of the pages for filming. */
import { FilmSlides } from "./recording/film-slides.js";
import { ScriptScroll } from "./recording/script-scroll.js";

FilmSlides.define();
ScriptScroll.define();
