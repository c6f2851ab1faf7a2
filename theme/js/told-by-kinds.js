/**
 * Selectors of what is read aloud of each kind of stop besides what all have. The site writes them in
 * here, from the records of the kinds.
 */
export const TOLD_BY_KINDS = "";
