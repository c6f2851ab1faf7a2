/** Where this script came from; a browser tells only while it is first run. */
export const here = document.currentScript instanceof HTMLScriptElement ? document.currentScript.src : location.href;

/** The site's folder: scripts stand in its `assets/`. A copy that is carried home is a site of its own. */
export const siteFolder = new URL("..", here);
