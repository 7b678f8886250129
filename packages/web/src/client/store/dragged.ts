/** What is in the air between shelf and sleeper: the line's id, under this type and its kind. */
export const DRAGGED = "text/x-nightspan-kit";
