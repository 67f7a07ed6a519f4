import type { OwnResinInput } from "./OwnResinInput";

/** The builder's own records, by id; one with the id of a generic record takes its place. */
export interface MaterialsInput {
  readonly resins?: Readonly<Record<string, OwnResinInput>>;
}
