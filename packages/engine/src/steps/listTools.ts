import { SPREAD_TOOLS, TOOLS, WORK_TOOLS } from "../constants/stepTools";
import type { StepRow } from "./StepRow";

/** The tools of a step, in words. */
export function listTools({ labour }: Pick<StepRow, "labour">): readonly string[] {
  const ids = labour.kind === "work" ? WORK_TOOLS[labour.work] : SPREAD_TOOLS[labour.spread];
  return ids.map((id) => TOOLS[id].title);
}
