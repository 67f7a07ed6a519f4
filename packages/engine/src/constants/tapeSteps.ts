import { M_PER_INCH } from "../foundation/units";

/** The finest marks a builder reads on a shop tape, to which marking-out dimensions are rounded in text. */
export const TAPE_STEPS = [
  { id: "inch", stepM: M_PER_INCH / 32, source: "common-practice" },
  { id: "mm", stepM: 0.0005, source: "common-practice" },
] as const;
