import type { SandingPlan } from "./SandingPlan";

/** The papers and their times: what the order of work needs before any film is known. */
export type LadderPlan = Pick<SandingPlan, "grits" | "work" | "admissibleRoughnessM" | "enoughFrom">;
