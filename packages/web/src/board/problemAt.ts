import type { Problem } from "@lapline/contract";
import type { Phrase } from "@lapline/engine";
import { type FieldPath, formatFieldPath } from "./withField";

/** What is wrong with the field at a path from the top of the board file. */
export function problemAt(problems: readonly Problem[], path: FieldPath): Phrase | undefined {
  const place = formatFieldPath(path);
  return problems.find((problem) => problem.path === place)?.says;
}
