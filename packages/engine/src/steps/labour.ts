import type { SpreadKind, WorkId } from "../constants/workTimes";
import type { Face } from "../layup/LayupPlan";
import type { Labour } from "./StepRow";

/** Work whose time comes from a table, with the faces it covers. */
export const work = (name: WorkId, ...faces: readonly Face[]): Labour => ({
  kind: "work",
  work: name,
  faces,
});

/** Resin work, whose time comes from the coat's cups. */
export const coat = (id: string, spread: SpreadKind): Labour => ({ kind: "coat", coat: id, spread });
