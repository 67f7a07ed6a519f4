import type { BoardFile, Problem } from "@lapline/contract";
import type { KnownMaterials, Plan } from "@lapline/engine";
import type { FieldPath } from "../board/withField";

/** Blank, glass and materials as they are typed, the plan of what is understood of them, and how to change them. */
export interface GlassForm {
  /** As it is typed. */
  readonly file: BoardFile;
  readonly plan: Plan;
  readonly problems: readonly Problem[];
  readonly known: KnownMaterials;
  edit(path: FieldPath, value: unknown): void;
}
