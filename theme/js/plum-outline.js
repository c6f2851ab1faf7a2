/** The plum with its stem, where they meet at 0, 0: the site draws every plum so; a test holds this to it. */
export const PLUM = "M-1.5 -6h3v6.1a13 15 0 1 1-3 0z";
