import type { Sourced } from "./Sourced";

/** The smallest step of a hanging or bench scale that carries a board. */
export const SCALE_STEP_KG: Sourced = { value: 0.005, source: "common-practice" };

/** A digital reading may be off by this share of a step, either way. */
export const READING_SHARE: Sourced = { value: 0.5, source: "reading-step" };
