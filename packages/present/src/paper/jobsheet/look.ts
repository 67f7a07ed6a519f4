import type { TextStyle } from "../pdf/Typesetter";

/** Sizes on the Sheet, em in millimetres. It is read from a metre away: notes 8 pt at least, figures 10 pt at least. */
export const TITLE: TextStyle = { sizeMm: 9, weight: 600 };
export const LONG_TITLE: TextStyle = { sizeMm: 5.6, weight: 600 };
export const HEADING: TextStyle = { sizeMm: 4.4, weight: 600 };
export const STRONG: TextStyle = { sizeMm: 3.6, weight: 600 };
export const BODY: TextStyle = { sizeMm: 3.55, weight: 400 };
export const NOTE: TextStyle = { sizeMm: 2.85, weight: 400 };
/** What is mixed, cut or weighed. */
export const ACT: TextStyle = { sizeMm: 5.2, weight: 600 };

/** White around the text; more than any printer asks. */
export const MARGIN_MM = 9;
