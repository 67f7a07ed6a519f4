import type { Reader } from "@lapline/present";

/** Names and words of the page, which is in English so far; no lengths are said with it. */
export const ENGLISH: Reader = { units: "mm", language: "en" };
