import type { Sourced } from "./Sourced";

/** Under the back foot, as a share of the board's length from the tail. */
export const BACK_FOOT_SHARE: Sourced = { value: 0.2, source: "common-practice" };
