import { DEMO_BOARDS, type FinsFile } from "@lapline/contract";
import { planOf } from "../src/plan/planOf";

/** The demo's quad with something else in its fins, read and planned, for tests. */
export function demoPlan(changes: Partial<FinsFile> = {}) {
  const file = JSON.parse(DEMO_BOARDS[0]?.text ?? "");
  const read = planOf(JSON.stringify({ ...file, fins: { ...file.fins, ...changes } }));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("; "));
  const { fins } = read.file;
  const { finset } = read.plan;
  if (fins === undefined || finset === null) throw new Error("the demo has fins");
  return { ...read, fins, finset };
}
