import type { BoardFile } from "@lapline/contract";
import type { FieldPath } from "../board/withField";
import { wallTime } from "../shared/wallTime";
import { weighedEntry } from "./weighedEntry";

/** The shaped blank is weighed before any step: its mass is a field of the blank. */
export const BLANK = "blank";

interface Written {
  readonly file: BoardFile;
  edit(path: FieldPath, value: unknown): void;
}

/** Writes the scale's reading down where it belongs; one that stands after the same step is corrected by it. */
export function writeWeighing({ file, edit }: Written, after: string, mass: string): void {
  const record = file.record ?? [];
  if (after === BLANK) edit(["blank", "shapedMass"], mass);
  else edit(["record"], [...record, weighedEntry(record, { after, mass, at: wallTime(new Date()) })]);
}
